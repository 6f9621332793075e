import { Disclosure } from '../../controls/Disclosure';
import { footLines, shortFootLine } from '../../words/safetyLines';

/** One line at the foot of the page with the rest behind it; in full at the foot of every print. */
export function Foot() {
  const lines = footLines.map((line) => <p key={line}>{line}</p>);
  return (
    <footer className="foot">
      <div className="not-printed">
        <p>{shortFootLine}</p>
        <Disclosure summary="Who to ask first" quiet>
          {lines}
        </Disclosure>
      </div>
      <div className="only-printed">{lines}</div>
    </footer>
  );
}
