import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxScene } from '../../shared-core/drawing/box-view/box.js';
import { boreMapScene } from '../../shared-core/drawing/bore-map/bore-map.js';
import type { DrawingReply } from '../../shared-core/drawing/messages/drawing.js';
import { handMade } from '../core/drawing/panels.js';
import {
  isBoxReply,
  isFromBoxPage,
  isToBoxPage,
  type FromBoxPage,
  type ToBoxPage,
} from '../../client/webview/messages/box.js';
import {
  isFromPage,
  isReply,
  isSubject,
  isToPage,
  type FromPage,
  type ToPage,
} from '../../client/webview/messages/preview.js';

const subject = { uri: 'file:///a.carcass.yaml', view: 'panel', follow: true, carcass: null, panel: 'left' } as const;
const pane = { width: 120, height: 90 };
const reply: DrawingReply = {
  kind: 'drawing',
  uri: subject.uri,
  version: 3,
  stale: null,
  carcasses: [{ name: 'sink', panels: ['left'] }],
  carcass: 'sink',
  panel: 'left',
  scene: boreMapScene(handMade(), 'left')!,
  ranges: {},
};
const toPage: readonly ToPage[] = [
  { type: 'reply', subject, nearer: 2, pane, reply },
  {
    type: 'reply',
    subject,
    nearer: 1,
    pane,
    reply: { kind: 'nothing', uri: 'u', version: 1, carcasses: [], reason: 'why' },
  },
  { type: 'cursor', sources: ['self:0-4'] },
  { type: 'lists', share: 30 },
  { type: 'paint', use: 'copy', name: 'sink-left', svg: '<svg/>' },
  { type: 'trouble', message: 'no server' },
];
const fromPage: readonly FromPage[] = [
  { type: 'ready', pane },
  { type: 'subject', view: 'all-panels', follow: false, carcass: 'sink', panel: null },
  { type: 'nearer', nearer: 4 },
  { type: 'pane', pane },
  { type: 'share', share: 30 },
  { type: 'reveal', source: 'self:0-4' },
  { type: 'move-shelf', shelf: 'loose-1', holes: -2 },
  { type: 'another' },
  { type: 'picture', use: 'print' },
  { type: 'painted', name: 'sink-left', png: 'iVBO' },
];

describe('messages between the extension and the page', () => {
  it('are taken as they are sent, also after the channel has copied them', () => {
    for (const message of toPage) expect(isToPage(structuredClone(message))).toBe(true);
    for (const message of fromPage) expect(isFromPage(structuredClone(message))).toBe(true);
    expect(isReply(structuredClone(reply))).toBe(true);
  });

  it('are not taken in the wrong direction', () => {
    for (const message of toPage) expect(isFromPage(message)).toBe(false);
    for (const message of fromPage) expect(isToPage(message)).toBe(false);
  });

  it('are not taken with a field missing or of another kind', () => {
    const good = [
      ...toPage.map((message) => [isToPage, message] as const),
      ...fromPage.map((message) => [isFromPage, message] as const),
    ];
    for (const [guard, message] of good) {
      for (const field of Object.keys(message)) {
        expect(guard({ ...message, [field]: undefined }), `${message.type} without ${field}`).toBe(false);
        expect(guard({ ...message, [field]: { odd: 1 } }), `${message.type} with an odd ${field}`).toBe(false);
      }
    }
    expect(isFromPage({ type: 'nearer', nearer: Number.NaN })).toBe(false);
    expect(isSubject({ ...subject, view: 'other' })).toBe(false);
  });

  it('never throw, whatever comes', () => {
    fc.assert(
      fc.property(fc.anything(), (anything) => {
        for (const guard of [isFromPage, isToPage, isReply, isSubject]) expect(typeof guard(anything)).toBe('boolean');
      }),
    );
  });
});

describe('messages between the extension and the page of the box view', () => {
  const range = { start: { line: 1, character: 0 }, end: { line: 1, character: 4 } };
  const box = { uri: 'u', what: 'carcass', carcass: 'sink' } as const;
  const nothing = { kind: 'nothing', uri: 'u', version: 1, reason: 'why' } as const;
  const drawing = boxScene(handMade());
  const scene = { ...drawing, sources: undefined };
  const shown = {
    kind: 'box',
    uri: 'u',
    version: 2,
    stale: null,
    what: 'wall',
    carcasses: [{ name: 'sink', range: null }],
    carcass: 'sink',
    title: 't',
    described: 'd',
    boxes: [{ at: [{ x: 0, y: 0, z: 0 }], scene, ranges: { 'self:0-4': range }, spoken: [{ range, parts: ['left'] }] }],
    worktops: [{ outline: [{ x: 0, y: -560_000 }], z: drawing.extents.z }],
  } as const;
  const to: readonly ToBoxPage[] = [
    { type: 'reply', subject: box, reply: nothing },
    { type: 'reply', subject: { ...box, carcass: null }, reply: shown },
    { type: 'cursor', pointed: [{ carcass: 'sink', parts: ['left'], sources: [] }] },
    { type: 'trouble', message: 'no server' },
  ];
  const from: readonly FromBoxPage[] = [
    { type: 'ready' },
    { type: 'choose', what: 'wall', carcass: null },
    { type: 'reveal', carcass: 'sink', source: 'self:0-4' },
    { type: 'painted', name: 'sink-box', png: 'iVBO' },
  ];

  it('are taken as they are sent, and not in the wrong direction', () => {
    for (const message of to)
      expect([isToBoxPage(structuredClone(message)), isFromBoxPage(message)]).toEqual([true, false]);
    for (const message of from)
      expect([isFromBoxPage(structuredClone(message)), isToBoxPage(message)]).toEqual([true, false]);
  });

  it('are not taken with a field missing or of another kind', () => {
    for (const [guard, message] of [
      ...to.map((one) => [isToBoxPage, one] as const),
      ...from.map((one) => [isFromBoxPage, one] as const),
    ])
      for (const field of Object.keys(message).filter((key) => key !== 'type')) {
        expect(guard({ ...message, [field]: undefined }), `${message.type} without ${field}`).toBe(false);
        expect(guard({ ...message, [field]: { odd: 1 } }), `${message.type} with an odd ${field}`).toBe(false);
      }
    for (const field of Object.keys(shown)) expect(isBoxReply({ ...shown, [field]: undefined }), field).toBe(false);
  });
});
