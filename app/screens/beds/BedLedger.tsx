import { useState } from 'react';
import { LedgerChart, type LedgerPeriod } from '../../charts/ledger/Chart';
import { ledgerTable } from '../../charts/ledger/tableData';
import type { Bed } from '../../document/schema';
import { useShown } from '../shown';
import { TakeAway } from '../takeAway/TakeAway';

/** A bed's ledger over the days that are chosen; what is taken away is of the same days. */
export function BedLedger(props: { readonly bed: Bed; readonly periods: readonly LedgerPeriod[] }) {
  const { bed, periods } = props;
  const { chart: units } = useShown();
  const [wanted, want] = useState<string | null>(null);
  const period = periods.find(({ key }) => key === wanted) ?? periods[0];
  if (!period) return null;
  return (
    <TakeAway
      name={`Ledger of ${bed.name}, ${period.words.toLowerCase()}`}
      table={() => ledgerTable(period.way, bed.areaM2, units)}
    >
      <LedgerChart
        periods={periods}
        shown={period.key}
        onShow={want}
        bedName={bed.name}
        areaM2={bed.areaM2}
        units={units}
      />
    </TakeAway>
  );
}
