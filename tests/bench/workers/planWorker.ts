import { parentPort, workerData } from 'node:worker_threads';
import { highsSolver } from '../../../app/solve/highsSolver';
import { compareGarden } from '../plan/compareGardens';
import type { PlayerData } from '../plan/gardenPlayers';

// Plays gardens by number, one after the other, as long as it is asked.

const { solverFolder } = workerData as PlayerData;
const solve = await highsSolver({
  locate: (file) => `${solverFolder}/${file}`,
  limit: { seconds: 60 },
});
parentPort!.on('message', (seed: number) => parentPort!.postMessage(compareGarden(seed, solve)));
parentPort!.postMessage('ready');
