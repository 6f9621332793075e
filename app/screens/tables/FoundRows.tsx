import type { ReactNode } from 'react';
import { useAnnounce } from '../../controls/Announcer';
import type { Edited } from '../../store/contract';
import { editFailureSentence } from '../../words/messages';
import { foundWords } from '../../words/tableWords';
import { useDesk } from '../desk';
import { freeName, showOpenRow } from './ownRows';
import { RowList, type ListedGroup } from './RowList';
import { SearchField } from './SearchField';
import { foundGroups } from './foundGroups';
import type { Column } from './tableColumns';

/** What the detail of a row can ask of the list it stands in. */
export interface RowDeeds<Line> {
  readonly close: () => void;
  /** adds a row of one's own that rests on it, and opens that */
  readonly addOwn: (line: Line) => void;
}

/** A table that is searched by the words of its names, whose rows open in place and can be made one's own. */
export function FoundRows<Line extends { readonly id: string; readonly name: string }>(props: {
  /** "material", "crop" */
  readonly what: string;
  readonly groups: readonly ListedGroup<Line>[];
  readonly columns: readonly Column<Line>[];
  readonly ownNames: readonly string[];
  readonly onAdd: (own: { readonly name: string; readonly basedOn: string }) => Edited<string>;
  readonly renderDetail: (id: string, deeds: RowDeeds<Line>) => ReactNode;
}) {
  const { what, groups, columns } = props;
  const announce = useAnnounce();
  const [typed, setTyped] = useDesk(`tables ${what} search`, () => '');
  const [open, setOpen] = useDesk<string | null>(`tables ${what} open`, () => null);
  const { left, isNear } = foundGroups(groups, typed);
  const count = (list: readonly ListedGroup<Line>[]) =>
    list.reduce((sum, { lines }) => sum + lines.length, 0);
  const addOwn = (line: Line) => {
    const name = freeName(line.name, props.ownNames);
    const result = props.onAdd({ name, basedOn: line.id });
    if (result.ok) {
      setTyped('');
      setOpen(result.value);
      showOpenRow();
    }
    announce(result.ok ? `Added: ${name}.` : editFailureSentence(result.error));
  };
  const deeds = { close: () => setOpen(null), addOwn };
  return (
    <>
      <SearchField
        label={`Find a ${what}`}
        text={typed}
        onText={setTyped}
        found={foundWords(count(left), count(groups), `${what}s`, isNear)}
      />
      {left.length > 0 && (
        <RowList
          label={`All ${what}s`}
          groups={left}
          columns={columns}
          open={open}
          onOpen={setOpen}
          renderDetail={(id) => props.renderDetail(id, deeds)}
        />
      )}
    </>
  );
}
