/** The end of a dialog: why it was refused, if it was, and the two ways out. */
export function DialogEnd(props: {
  /** read out when it appears; '' or null where nothing is wrong */
  readonly refused: string | null;
  /** what would mend it, by one press */
  readonly remedy?: { readonly label: string; readonly onTake: () => void } | null;
  /** what the main button says */
  readonly keep: string;
  /** what the way out says, where nothing is left to cancel */
  readonly leave?: string | undefined;
  readonly onCancel: () => void;
}) {
  return (
    <>
      {props.refused && (
        <p role="alert" className="field-trouble">
          <span aria-hidden="true" className="field-trouble-mark" />
          {props.refused}
        </p>
      )}
      {props.refused && props.remedy && (
        <div className="button-row">
          <button type="button" className="button-small" onClick={props.remedy.onTake}>
            {props.remedy.label}
          </button>
        </div>
      )}
      <div className="button-row">
        <button type="submit" className="button-main">
          {props.keep}
        </button>
        <button type="button" className="button" onClick={props.onCancel}>
          {props.leave ?? 'Cancel'}
        </button>
      </div>
    </>
  );
}
