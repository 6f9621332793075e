import { useEffect } from 'react';
import { useAnnounce } from '../../controls/Announcer';
import { Field } from '../../controls/Field';

/** While letters still come there is nothing to tell. */
const pauseMilliseconds = 700;

/** Narrows a list by its names while one types; how many are left is shown and, after a pause, said. */
export function SearchField(props: {
  readonly label: string;
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly found: string;
}) {
  const announce = useAnnounce();
  const { text, found } = props;
  useEffect(() => {
    if (text === '') return undefined;
    const timer = setTimeout(() => announce(found), pauseMilliseconds);
    return () => clearTimeout(timer);
  }, [announce, text, found]);
  return (
    <Field label={props.label} echo={found} className="field-search">
      {(links) => (
        <input
          {...links}
          type="text"
          role="searchbox"
          autoComplete="off"
          spellCheck={false}
          maxLength={80}
          value={text}
          onChange={(event) => props.onText(event.target.value)}
          onKeyDown={(event) => {
            if (event.key === 'Escape' && text !== '') {
              event.preventDefault();
              props.onText('');
            }
          }}
        />
      )}
    </Field>
  );
}
