import { rule } from './rule-tests.js';

const BASE = 'carcasses:\n  sink:\n    kind: base\n    width: 600\n    doors: { hung: left }\n    end-panels: right\n';

rule('beside-too-near', {
  tells: [
    {
      // The door ends 1.5 before the outside of the side, where the end panel begins.
      carcass: 'kind: base\nwidth: 600\ndoors: left\nend-panels: «right»',
      says: 'door-1 stands 1.5 mm beside end-right, and between two fronts there are 3 mm (`gap`). Beside a panel that reaches as far forward as the fronts the whole gap is needed: make `reveal` as great.',
      severity: 'warning',
      panel: 'end-right',
    },
    {
      carcass: 'kind: base\nwidth: 600\ndoors: left\nfillers: { left: «40» }',
      says: 'door-1 stands 1.5 mm beside filler-left, and between two fronts there are 3 mm (`gap`). Beside a panel that reaches as far forward as the fronts the whole gap is needed: make `reveal` as great.',
      panel: 'filler-left',
    },
  ],
  sound: [
    { carcass: 'kind: base\nwidth: 600\nend-panels: both', besides: [] },
    { carcass: 'kind: base\nwidth: 600\ndoors: { hung: left, reveal: 3 }\nend-panels: right' },
    { carcass: 'kind: base\nwidth: 600\ndoors: { hung: left, how: inset }\nend-panels: right' },
  ],
  repairs: [
    ['Let the doors leave 3 mm to be seen of the sides', BASE, BASE.replace('hung: left', 'hung: left, reveal: 3')],
  ],
});
