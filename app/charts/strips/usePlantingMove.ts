import {
  useCallback,
  useEffect,
  useRef,
  useState,
  type KeyboardEvent,
  type PointerEvent,
} from 'react';
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
) {
  const [move, setMove] = useState<PlantingMove | null>(null);
  const now = useRef<PlantingMove | null>(null);
  const press = useRef<{ x: number; plantingId: string; part: PlantingPart } | null>(null);
  const wasDragged = useRef(false);
  const put = useCallback((next: PlantingMove | null) => {
    now.current = next;
    setMove(next);
  }, []);
  const keep = useCallback(() => {
    const moved = now.current;
    press.current = null;
    put(null);
    if (moved && moved.by !== 0) onKeep(moved);
  }, [onKeep, put]);
  const back = useCallback(() => {
    const moved = now.current;
    press.current = null;
    put(null);
    if (moved) onBack();
  }, [onBack, put]);

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

  return {
    move,
    /** for whatever a part of a planting is pressed on */
    handlers: (plantingId: string, partAt: (offset: number, width: number) => PlantingPart) => ({
      onPointerDown: (event: PointerEvent<HTMLElement>) => {
        if (event.button !== 0) return;
        const box = event.currentTarget.getBoundingClientRect();
        wasDragged.current = false;
        press.current = {
          x: event.clientX,
          plantingId,
          part: partAt(event.clientX - box.left, box.width),
        };
        event.currentTarget.setPointerCapture(event.pointerId);
      },
      onPointerMove: (event: PointerEvent<HTMLElement>) => {
        const from = press.current;
        if (!from || from.plantingId !== plantingId) return;
        const far = event.clientX - from.x;
        if (!wasDragged.current && Math.abs(far) < leastDrag) return;
        wasDragged.current = true;
        put({ plantingId, part: from.part, by: Math.round(far / pxPerDay) });
      },
      onPointerUp: () => (press.current ? keep() : undefined),
      onPointerCancel: back,
      onBlur: () => (press.current ? undefined : keep()),
      onClickCapture: (event: { preventDefault(): void; stopPropagation(): void }) => {
        // the click at a drag's end opens nothing
        if (!wasDragged.current) return;
        wasDragged.current = false;
        event.preventDefault();
        event.stopPropagation();
      },
    }),
    /** moves by key; whether the key was one of those */
    onKey: (event: KeyboardEvent, plantingId: string, part: PlantingPart): boolean => {
      if (event.altKey || event.ctrlKey || event.metaKey) return false;
      const days = daysOfKey[event.key];
      const before = now.current;
      const isSame = before?.plantingId === plantingId && before.part === part;
      if (days !== undefined) {
        const step = event.shiftKey && Math.abs(days) === 1 ? days * 7 : days;
        put({ plantingId, part, by: (isSame ? before.by : 0) + step });
      } else if (event.key === 'Enter' && isSame) keep();
      else return false;
      event.preventDefault();
      return true;
    },
  };
}
