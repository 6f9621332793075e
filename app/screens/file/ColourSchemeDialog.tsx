import { useState } from 'react';
import { ChoiceRow, type Choice } from '../../controls/ChoiceRow';
import { Dialog } from '../../controls/Dialog';
import { colourSchemes, type ColourScheme } from '../../store/colourSchemes';
import { hostSentence } from '../../words/messages';
import { useMowings } from '../store';

const choices: readonly Choice<ColourScheme>[] = [
  { value: 'system', label: 'As the computer has it', hint: 'and changes with it' },
  { value: 'light', label: 'Light', hint: 'dark letters on pale paper' },
  { value: 'dark', label: 'Dark', hint: 'pale letters on dark ground' },
];

/** The page's first tag holds what was chosen: the shell writes it there at every start. */
function worn(): ColourScheme {
  const { theme } = document.documentElement.dataset;
  return colourSchemes.find((scheme) => scheme === theme) ?? 'system';
}

/** Light or dark for this computer, whatever garden is open: worn at once, and kept. */
export function ColourSchemeDialog() {
  const showDialog = useMowings((state) => state.showDialog);
  const keep = useMowings((state) => state.chooseColourScheme);
  const [chosen, setChosen] = useState(worn);
  const [trouble, setTrouble] = useState<string | null>(null);

  const choose = (scheme: ColourScheme): void => {
    setChosen(scheme);
    setTrouble(null);
    const { dataset } = document.documentElement;
    if (scheme === 'system') delete dataset['theme'];
    else dataset['theme'] = scheme;
    void keep({ scheme }).then((kept) => {
      if (!kept.ok) setTrouble(hostSentence('colour scheme', kept.error));
    });
  };

  return (
    <Dialog title="Light or dark" onClose={() => showDialog(null)}>
      <ChoiceRow legend="Show Mowings" choices={choices} value={chosen} onChoose={choose} stacked />
      {trouble !== null && (
        <p role="alert" className="field-trouble">
          <span aria-hidden="true" className="field-trouble-mark" />
          {trouble}
        </p>
      )}
      <p className="small soft">
        For every garden on this computer. Paper is always light, and a contrast theme of the
        computer goes before this choice.
      </p>
    </Dialog>
  );
}
