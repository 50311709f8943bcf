import type { Spoken } from '../words/spoken.js';
import { box } from './fr/box.js';
import { drawerKeys } from './fr/drawer-keys.js';
import { drawing } from './fr/drawing.js';
import { labels } from './fr/drawing-labels.js';
import { findings } from './fr/findings.js';
import { findingsOfLoads } from './fr/findings-of-loads.js';
import { findingsOfPanels } from './fr/findings-of-panels.js';
import { findingsOfPulls } from './fr/findings-of-pulls.js';
import { findingsOfRows } from './fr/findings-of-rows.js';
import { findingsOfBeside } from './fr/findings-of-beside.js';
import { findingsOfFeet } from './fr/findings-of-feet.js';
import { findingsOfHanging } from './fr/findings-of-hanging.js';
import { findingsOfWardrobes } from './fr/findings-of-wardrobes.js';
import { job } from './fr/job.js';
import { jobKeys } from './fr/job-keys.js';
import { loadKeys } from './fr/load-keys.js';
import { machineKeys } from './fr/machine-keys.js';
import { machines } from './fr/machines.js';
import { paperLabels } from './fr/paper-labels.js';
import { papers } from './fr/papers.js';
import { reading } from './fr/reading.js';
import { replay } from './fr/replay.js';
import { service } from './fr/service.js';
import { shopKeys } from './fr/shop-keys.js';
import { setUp } from './fr/set-up.js';
import { text } from './fr/text.js';
import { allInType } from './fr/type.js';

/** What the core says, in French. */
export const fr: Spoken = allInType({
  language: 'fr',
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
});
