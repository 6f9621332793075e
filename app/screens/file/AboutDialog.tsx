import { Dialog } from '../../controls/Dialog';
import { useMowings } from '../store';

/** What program this is and what its figures are worth. */
export function AboutDialog() {
  const about = useMowings((state) => state.about);
  const showDialog = useMowings((state) => state.showDialog);
  return (
    <Dialog title="About Mowings" onClose={() => showDialog(null)}>
      <p>
        Mowings {about?.version} keeps the account of a garden’s mulch and nitrogen, bed by bed and
        day by day.
      </p>
      <p>
        Its figures are estimates from published numbers and from what you enter. Every one of them
        can say where it comes from and how well it is known.
      </p>
      <p>
        Nothing leaves this computer. Your garden is a plain text file
        {about ? `, kept in ${about.folder} unless you say otherwise` : ''}.
      </p>
      <p className="small soft">
        The sample’s weather is New York’s daily record as published in the open package
        vega-datasets. The letters are Besley and Ysabeau Office, under the Open Font License. The
        program itself: MIT licence.
      </p>
    </Dialog>
  );
}
