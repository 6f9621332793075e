import { PickOne } from '../../controls/PickOne';
import type { TableColumnSeen } from '../../document/weather/tableLayout';
import type { ColumnRole, Understood, WeatherOptions } from '../../document/weather/weatherTypes';

type Said = NonNullable<WeatherOptions['columns']>;

const asked = [
  ['date', 'Day'],
  ['lowest', 'Lowest temperature'],
  ['highest', 'Highest temperature'],
  ['rain', 'Rain'],
] as const satisfies readonly (readonly [ColumnRole, string])[];

const nameOf = ({ number, header, firstValue }: TableColumnSeen): string => {
  const name = header === '' ? `Column ${number}` : header;
  return firstValue === '' ? name : `${name} (${firstValue}, …)`;
};

/** Which column of a table holds what: as it was found, or as the person says. */
export function ColumnPicks(props: {
  readonly columns: readonly TableColumnSeen[];
  readonly understood: readonly Understood[];
  readonly said: Said;
  readonly onSay: (said: Said) => void;
}) {
  const { columns, understood, said, onSay } = props;
  const pick = (role: ColumnRole, value: string): void => {
    // a column holds one thing: who takes it for another takes it away there
    const others = Object.entries(said).filter(
      ([other, column]) => other !== role && String(column) !== value,
    );
    onSay(Object.fromEntries(value === '' ? others : [...others, [role, value]]) as Said);
  };
  return (
    <div className="fields">
      {asked.map(([role, label]) => {
        const found = understood.find((one) => one.role === role);
        const isSaid = said[role] !== undefined;
        return (
          <PickOne
            key={role}
            label={label}
            value={String(said[role] ?? '')}
            groups={[
              {
                label: null,
                options: [
                  {
                    value: '',
                    label: isSaid
                      ? 'As it was found'
                      : found
                        ? `As found: ${found.where}`
                        : 'Not found',
                  },
                  ...columns.map((column) => ({
                    value: String(column.number),
                    label: nameOf(column),
                  })),
                ],
              },
            ]}
            onPick={(value) => pick(role, value)}
          />
        );
      })}
    </div>
  );
}
