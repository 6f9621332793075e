/** Shows and hides the table, or the list, of a chart's numbers. */
export function TableButton(props: {
  readonly tableId: string;
  readonly isShown: boolean;
  readonly onShow: (isShown: boolean) => void;
  /** what it says while the table is hidden, and while it stands there */
  readonly words: { readonly table: string; readonly hideTable: string };
}) {
  const { isShown, words } = props;
  return (
    <button
      type="button"
      className="button-small"
      aria-expanded={isShown}
      aria-controls={props.tableId}
      onClick={() => props.onShow(!isShown)}
    >
      {isShown ? words.hideTable : words.table}
    </button>
  );
}
