import { footLines } from '../../words/safetyLines';

/** Always at the foot of the page and of every print. */
export function Foot() {
  return (
    <footer className="foot">
      {footLines.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </footer>
  );
}
