import { describe, expect, it } from 'vitest';
import { AS_DRAWN } from '../../../shared-core/tolerance/faces.js';
import { heldOpen, rivalsOf } from '../../../shared-core/tolerance/rivals.js';
import { toleranceOf, type JointTolerance, type ToleranceCase } from '../../../shared-core/tolerance/tolerance.js';
import { mm } from '../specs.js';
import { box } from './boxes.js';

const of = (tolerance: ToleranceCase, joint: string): JointTolerance =>
  toleranceOf(tolerance).joints.find((one) => one.joint === joint)!;

describe('panels between the same two faces', () => {
  it('top and bottom alone are not at odds: the sides lean', () => {
    expect(rivalsOf(box({}).carcass).size).toBe(0);
    expect(of(box({ length: 200 }), 'top/left').gap).toEqual({ worst: 0, rootSumSquare: 0, causes: [] });
  });

  /**
   * Sides 720 high of 16 board: bottom at 0, top at 720, a shelf whose underside stands at 288: 288/720 = 0.4 of the way. (For
   * the top, t points down from its upper face at 720; for bottom and shelf up from their undersides.) The sides rest on
   * bottom and top, so at the shelf they stand 0.6 of the bottom's and 0.4 of the top's error too far apart. All may stray
   * by 0.2: worst 0.2 * (0.6 + 0.4 + 1) = 0.4; root of squares 0.2 * root(0.36 + 0.16 + 1) = 0.246577.
   */
  it('a shelf that is too short stands off, one too long keeps top and bottom off', () => {
    const at = 288 + 8;
    const made = box({ length: 200 }, { fixedShelves: [{ at: mm(at) }] });
    const shelf = made.carcass.panels.find(({ key }) => key === 'shelf-1')!;
    expect(shelf.pose.origin.z).toBe(mm(288));
    for (const joint of ['shelf-1/left', 'shelf-1/right', 'bottom/left', 'top/right']) {
      const { gap } = of(made, joint);
      expect(gap.worst).toBeCloseTo(400, 9);
      expect(gap.rootSumSquare).toBeCloseTo(200 * Math.sqrt(1.52), 4);
      expect(gap.causes.map(({ of: panel, rise }) => `${panel} ${Math.round(rise)}`)).toEqual([
        'shelf-1 200',
        'bottom 120',
        'top 80',
      ]);
    }
    const rivals = rivalsOf(made.carcass);
    const short = (kind: string, panel: string): number => (kind === 'length' && panel === 'shelf-1' ? -300 : 0);
    const open = (joint: string): number[] => rivals.get(joint)!.map((rival) => heldOpen(rival, short, () => AS_DRAWN));
    expect(open('shelf-1/left')).toEqual([300, 300]);
    expect(open('top/right')).toEqual([-300, -300]);
  });

  /**
   * Shelves at 0.25 and 0.5 of the way; the sides are held off by the one that is too long, and the other one stands off by
   * what it is too short besides. All may stray by 0.2: between the shelves the sides stand 0.25 of the bottom's and of the
   * top's error closer or wider; worst 0.2 * (1 + 1 + 0.25 + 0.25) = 0.5.
   */
  it('a shelf that is too long holds the sides off a shorter one', () => {
    const made = box({ length: 200 }, { fixedShelves: [{ at: mm(180 + 8) }, { at: mm(360 + 8) }] });
    for (const joint of ['shelf-1/left', 'shelf-2/right']) {
      const { gap } = of(made, joint);
      expect(gap.worst).toBeCloseTo(500, 9);
      expect(gap.rootSumSquare).toBeCloseTo(200 * Math.sqrt(2 + 2 / 16), 4);
    }
  });

  it('two rails at one height are at odds with each other', () => {
    const { carcass } = box({}, { top: 'rails' });
    const rivals = rivalsOf(carcass);
    const longer = (panel: string) => (kind: string, of: string) => (kind === 'length' && of === panel ? 500 : 0);
    const open = (joint: string, by: string): number =>
      Math.max(...rivals.get(joint)!.map((rival) => heldOpen(rival, longer(by), () => AS_DRAWN)));
    expect(open('rail-front/left', 'rail-back')).toBe(500);
    expect(open('rail-back/right', 'rail-front')).toBe(500);
  });
});
