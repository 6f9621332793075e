import { useMowings } from '../store';
import {
  aboutDialog,
  findDialog,
  guideDialog,
  colourSchemeDialog,
  openDialog,
  printDialog,
  saveAsDialog,
  treatmentDialog,
  unsavedDialog,
} from '../places';

/** The one question that is open, if any. */
export function Dialogs() {
  const dialog = useMowings((state) => state.dialog);
  if (dialog === null) return null;
  switch (dialog.kind) {
    case 'save-as':
      return <saveAsDialog.Part />;
    case 'open':
      return <openDialog.Part />;
    case 'close-unsaved':
      return <unsavedDialog.Part />;
    case 'find':
      return <findDialog.Part />;
    case 'about':
      return <aboutDialog.Part />;
    case 'colour-scheme':
      return <colourSchemeDialog.Part />;
    case 'guide':
      return <guideDialog.Part />;
    case 'print':
      return <printDialog.Part cut={dialog.cut} />;
    case 'treatment':
      return <treatmentDialog.Part dialog={dialog} />;
    default:
      // questions that belong to one part of a page are drawn there
      return null;
  }
}
