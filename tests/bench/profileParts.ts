import { Session, type Profiler } from 'node:inspector/promises';

/** Functions of the engine by the part of a run they are; what they call is theirs. */
const partOf: ReadonlyMap<string, string> = new Map([
  ['startingState', 'start'],
  ['beginBusyDay', 'events'],
  ['advancePlants', 'plants'],
  ['soakAndWarm', 'water'],
  ['loseAndRelease', 'losses'],
  ['decayDay', 'decay'],
  ['leaveCover', 'cover'],
  ['feedPlants', 'uptake'],
  ['harvestPlants', 'harvest'],
  ['stepDay', 'events'],
  ['watchSeason', 'keep'],
  ['(garbage collector)', 'memory'],
]);

/**
 * Share of the time that each part of a run takes, by sampling. Work outside a run counts for
 * nothing.
 */
export async function profileParts(work: () => void): Promise<ReadonlyMap<string, number>> {
  const session = new Session();
  session.connect();
  await session.post('Profiler.enable');
  await session.post('Profiler.setSamplingInterval', { interval: 100 });
  await session.post('Profiler.start');
  work();
  const { profile } = await session.post('Profiler.stop');
  session.disconnect();
  return sharesOf(profile);
}

function sharesOf({ nodes, samples = [], timeDeltas = [] }: Profiler.Profile) {
  const byId = new Map(nodes.map((node) => [node.id, node]));
  const parts = new Map<number, string | null>();
  const visit = (id: number, inherited: string | null): void => {
    const node = byId.get(id)!;
    const part = partOf.get(node.callFrame.functionName) ?? inherited;
    parts.set(id, part);
    for (const child of node.children ?? []) visit(child, part);
  };
  visit(nodes[0]!.id, null);
  const time = new Map<string, number>();
  let all = 0;
  samples.forEach((id, at) => {
    const part = parts.get(id);
    if (!part) return;
    const took = timeDeltas[at]!;
    time.set(part, (time.get(part) ?? 0) + took);
    all += took;
  });
  return new Map([...time].map(([part, took]) => [part, took / all]));
}
