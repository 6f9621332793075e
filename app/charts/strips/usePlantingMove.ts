import { useEffect, useLayoutEffect, useState, type KeyboardEvent, type PointerEvent } from 'react';
import type { PlantingPart } from '../../words/seasonPlaceWords';

/** A planting that is being moved: nothing of the garden has changed yet. */
export interface PlantingMove {
  readonly plantingId: string;
  readonly part: PlantingPart;
  /** days, later is more */
  readonly by: number;
}

const daysOfKey: Readonly<Record<string, number>> = {
  ArrowLeft: -1,
  ArrowRight: 1,
  PageDown: -7,
  PageUp: 7,
};
/** a press that goes less far is no drag [px] */
const leastDrag = 4;

/** What a press on a planting, or a key, does to it. Stays the same as long as the drawing stands. */
export interface PlantingHands {
  /** for whatever a part of a planting is pressed on */
  readonly on: (
    plantingId: string,
    partAt: (offset: number, width: number) => PlantingPart,
  ) => {
    onPointerDown(event: PointerEvent<HTMLElement>): void;
    onPointerMove(event: PointerEvent<HTMLElement>): void;
    onPointerUp(): void;
    onPointerCancel(): void;
    onBlur(): void;
    onClickCapture(event: { preventDefault(): void; stopPropagation(): void }): void;
  };
  /**
   * Moves by key, a day by the arrows and a week by the page keys; whether the key was one of those.
   * A whole planting is taken hold of by Shift and an arrow, or by a page key.
   */
  readonly onKey: (event: KeyboardEvent, plantingId: string, part: PlantingPart) => boolean;
}

/**
 * Moves plantings by pointer or by key. What is moved is shown and changes nothing until it is let
 * go, or kept by Enter or by going elsewhere; Escape puts it back.
 *
 * @param pxPerDay of the drawing
 * @param onKeep   called once for each move that went somewhere
 * @param onBack   called when one was put back
 */
export function usePlantingMove(
  pxPerDay: number,
  onKeep: (move: PlantingMove) => void,
  onBack: () => void,
): { readonly move: PlantingMove | null; readonly hands: PlantingHands } {
  const [move, setMove] = useState<PlantingMove | null>(null);
  const [{ hands, back, heed }] = useState(() => handsOf(setMove));
  useLayoutEffect(() => heed({ pxPerDay, onKeep, onBack }));

  const isMoving = move !== null;
  useEffect(() => {
    if (!isMoving) return undefined;
    const onKey = (event: globalThis.KeyboardEvent) => {
      if (event.key !== 'Escape') return;
      event.preventDefault();
      event.stopPropagation();
      back();
    };
    document.addEventListener('keydown', onKey, true);
    return () => document.removeEventListener('keydown', onKey, true);
  }, [isMoving, back]);
  return { move, hands };
}

/** What is to be done with a move; other with every drawing. */
interface Around {
  readonly pxPerDay: number;
  readonly onKeep: (move: PlantingMove) => void;
  readonly onBack: () => void;
}

function handsOf(show: (move: PlantingMove | null) => void) {
  let around: Around | null = null;
  let now: PlantingMove | null = null;
  let press: { x: number; plantingId: string; part: PlantingPart } | null = null;
  let wasDragged = false;
  const put = (next: PlantingMove | null): void => {
    now = next;
    show(next);
  };
  const end = (): PlantingMove | null => {
    const moved = now;
    press = null;
    put(null);
    return moved;
  };
  const keep = (): void => {
    const moved = end();
    if (moved && moved.by !== 0) around?.onKeep(moved);
  };
  const back = (): void => {
    if (end()) around?.onBack();
  };
  const hands: PlantingHands = {
    on: (plantingId, partAt) => ({
      onPointerDown: (event) => {
        if (event.button !== 0) return;
        const box = event.currentTarget.getBoundingClientRect();
        wasDragged = false;
        press = {
          x: event.clientX,
          plantingId,
          part: partAt(event.clientX - box.left, box.width),
        };
        event.currentTarget.setPointerCapture(event.pointerId);
      },
      onPointerMove: (event) => {
        if (press?.plantingId !== plantingId) return;
        const far = event.clientX - press.x;
        if (!wasDragged && Math.abs(far) < leastDrag) return;
        wasDragged = true;
        const by = Math.round(far / (around?.pxPerDay ?? 1));
        if (now?.by !== by) put({ plantingId, part: press.part, by });
      },
      onPointerUp: () => (press ? keep() : undefined),
      onPointerCancel: back,
      onBlur: () => (press ? undefined : keep()),
      onClickCapture: (event) => {
        // the click at a drag's end opens nothing
        if (!wasDragged) return;
        wasDragged = false;
        event.preventDefault();
        event.stopPropagation();
      },
    }),
    onKey: (event, plantingId, part) => {
      if (event.altKey || event.ctrlKey || event.metaKey) return false;
      const days = daysOfKey[event.key];
      const isSame = now?.plantingId === plantingId && now.part === part;
      // on a planting the arrows alone lead along its strip, until it is taken hold of
      const isWalk = part === 'whole' && !isSame && Math.abs(days ?? 0) === 1 && !event.shiftKey;
      if (isWalk) return false;
      if (days !== undefined) put({ plantingId, part, by: (isSame && now ? now.by : 0) + days });
      else if (event.key === 'Enter' && isSame) keep();
      else return false;
      event.preventDefault();
      return true;
    },
  };
  const heed = (next: Around): void => {
    around = next;
  };
  return { hands, back, heed };
}
