// `npm start`. It may run on an old Node, before anything is installed, so this file uses nothing
// but Node's own modules and loads the rest only once the version is known to be new enough.
import { nodeComplaint } from './launch/nodeVersion.js';

const complaint = nodeComplaint(process.versions.node);
if (complaint) {
  console.error(complaint);
  process.exitCode = 1;
} else {
  import('./launch/launch.js').then(({ launch }) => launch(process.argv.slice(2)));
}
