import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { Announcer } from './controls/Announcer';
import { chooseHost, onMenu, onOpenFile } from './host/chooseHost';
import { CommandsProvider } from './screens/frame/commands';
import { Frame } from './screens/frame/Frame';
import { MenuCommands } from './screens/frame/MenuCommands';
import { StoreProvider } from './screens/store';
import { createMowingsStore } from './store/store';
import './style/fonts.css';
import './style/tokens.css';
import './style/base.css';
import './style/forms.css';
import './style/layout.css';
import './style/screens.css';
import './style/charts.css';
import { limits } from './tables/thresholds';
import { startSeasonWorker, workerEngine } from './worker/client';
import { startPlanWorker, workerPlanner } from './worker/planClient';

const engine = workerEngine(startSeasonWorker, navigator.hardwareConcurrency);
// its code comes while the page's own is read and drawn
engine.begin();
const store = createMowingsStore({
  host: chooseHost(),
  engine,
  planner: workerPlanner(startPlanWorker),
});

const root = document.getElementById('root');
if (!root) throw new Error('The page has no place for the window');
createRoot(root).render(
  <StrictMode>
    <StoreProvider store={store}>
      <Announcer>
        <CommandsProvider>
          <MenuCommands onMenu={onMenu} onOpenFile={onOpenFile} />
          <Frame />
        </CommandsProvider>
      </Announcer>
    </StoreProvider>
  </StrictMode>,
);
void store.getState().start();
// once the window stands and has nothing to do, so that the first garden need not wait for it
const warm = (): void =>
  void import('./document/warmQuestion').then(
    ({ warmQuestion }) => engine.warm({ kind: 'draws', beds: warmQuestion(), limits }),
    // not warm, it only answers later
    () => undefined,
  );
if ('requestIdleCallback' in window) requestIdleCallback(warm, { timeout: 3000 });
else setTimeout(warm, 1000);
