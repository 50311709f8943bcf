import type { Spoken } from '../words/spoken.js';
import { box } from './de/box.js';
import { drawerKeys } from './de/drawer-keys.js';
import { drawing } from './de/drawing.js';
import { labels } from './de/drawing-labels.js';
import { findings } from './de/findings.js';
import { findingsOfLoads } from './de/findings-of-loads.js';
import { findingsOfPanels } from './de/findings-of-panels.js';
import { findingsOfPulls } from './de/findings-of-pulls.js';
import { findingsOfRows } from './de/findings-of-rows.js';
import { findingsOfBeside } from './de/findings-of-beside.js';
import { findingsOfFeet } from './de/findings-of-feet.js';
import { findingsOfHanging } from './de/findings-of-hanging.js';
import { findingsOfWardrobes } from './de/findings-of-wardrobes.js';
import { job } from './de/job.js';
import { jobKeys } from './de/job-keys.js';
import { loadKeys } from './de/load-keys.js';
import { machineKeys } from './de/machine-keys.js';
import { machines } from './de/machines.js';
import { paperLabels } from './de/paper-labels.js';
import { papers } from './de/papers.js';
import { reading } from './de/reading.js';
import { replay } from './de/replay.js';
import { service } from './de/service.js';
import { shopKeys } from './de/shop-keys.js';
import { setUp } from './de/set-up.js';
import { text } from './de/text.js';

/** What the core says, in German. */
export const de: Spoken = {
  language: 'de',
  messages: {
    ...text,
    ...reading,
    ...job,
    ...findings,
    ...findingsOfLoads,
    ...findingsOfPanels,
    ...findingsOfBeside,
    ...findingsOfFeet,
    ...findingsOfHanging,
    ...findingsOfWardrobes,
    ...findingsOfPulls,
    ...findingsOfRows,
    ...machines,
    ...service,
    ...drawing,
    ...box,
    ...setUp,
    ...papers,
    ...replay,
  },
  labels: { ...labels, ...paperLabels, keys: { ...shopKeys, ...machineKeys, ...jobKeys, ...drawerKeys, ...loadKeys } },
};
