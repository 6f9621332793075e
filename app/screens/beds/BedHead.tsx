import type { ReactNode } from 'react';
import { Icon } from '../../controls/marks/Icon';
import { useMowings } from '../store';

/** The head of a bed's page: the way back to all beds, its name, and what it is. */
export function BedHead(props: {
  readonly name: string;
  /** beneath its name */
  readonly children: ReactNode;
  /** beside it */
  readonly deed?: ReactNode;
}) {
  const openBed = useMowings((state) => state.openBed);
  return (
    <div className="page-head">
      <div>
        <button type="button" className="button-small" onClick={() => openBed(null)}>
          <Icon name="left" /> All beds
        </button>
        <h1 tabIndex={-1}>{props.name}</h1>
        {props.children}
      </div>
      {props.deed}
    </div>
  );
}
