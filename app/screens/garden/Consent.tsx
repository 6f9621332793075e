import { consentLines } from '../../words/downloadWords';

/** What one agrees to before anything leaves this computer. */
export function Consent(props: { readonly place: string | null; readonly host: string }) {
  return (
    <dl className="consent">
      {consentLines(props.place, props.host).map(({ asks, says }) => (
        <div key={asks}>
          <dt>{asks}</dt>
          <dd>{says}</dd>
        </div>
      ))}
    </dl>
  );
}
