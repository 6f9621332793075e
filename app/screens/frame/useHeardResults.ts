import { useEffect, useRef } from 'react';
import { useAnnounce } from '../../controls/Announcer';
import { bedsHeard, type HeardStates } from '../../words/heardWords';
import { useMowings } from '../store';
import { statesHeard } from '../week/previewHeard';

/** Says what became of the beds whenever they were reckoned anew and a state is another. */
export function useHeardResults(): void {
  const announce = useAnnounce();
  const garden = useMowings((state) => state.garden);
  const work = useMowings((state) => state.work);
  const bedResults = useMowings((state) => state.bedResults);
  const before = useRef<readonly HeardStates[]>([]);
  useEffect(() => {
    if (!garden) {
      // what was said of one garden's beds is not left to be read in another
      if (before.current.length > 0) announce('', 'beds');
      before.current = [];
    }
    if (!garden || work !== 'ready') return;
    const after = garden.beds.flatMap((bed) => {
      const results = bedResults[bed.id];
      return results ? [statesHeard(bed, results)] : [];
    });
    const words = bedsHeard(before.current, after);
    before.current = after;
    if (words !== '') announce(words, 'beds');
  }, [announce, bedResults, garden, work]);
}
