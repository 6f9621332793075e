import { useId } from 'react';
import type { AmountSlide } from './amountSlide';

/**
 * The same amount as in the field beside it, slid. By keyboard the field has it, typed or by its
 * arrow keys: one amount is one stop of the Tab key.
 */
export function AmountSlider(props: {
  readonly slide: AmountSlide;
  readonly onText: (text: string) => void;
}) {
  const { slide, onText } = props;
  const id = useId();
  return (
    <div className="field amount-slider">
      <label htmlFor={id} className="field-label">
        Slide it
      </label>
      <input
        id={id}
        type="range"
        min={1}
        max={slide.most}
        step={1}
        tabIndex={-1}
        value={slide.at}
        aria-valuetext={slide.textOf(slide.at)}
        onChange={(event) => onText(slide.textOf(Number(event.target.value)))}
      />
      <p className="amount-slider-ends small soft" aria-hidden="true">
        <span>{slide.textOf(1)}</span>
        <span>{slide.textOf(slide.most)}</span>
      </p>
    </div>
  );
}
