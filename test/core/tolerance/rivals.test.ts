import { describe, expect, it } from 'vitest';
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
      expect(gap.rootSumSquare).toBeCloseTo(200 * Math.sqrt(1.52), 9);
      expect(gap.causes.map(({ of: panel, rise }) => `${panel} ${Math.round(rise)}`)).toEqual([
        'shelf-1 200',
        'bottom 120',
        'top 80',
      ]);
    }
    const [rival] = rivalsOf(made.carcass).get('shelf-1')!;
    const short = (kind: string, panel: string): number => (kind === 'length' && panel === 'shelf-1' ? -300 : 0);
    expect(heldOpen(rival!, short)).toBe(300);
    expect(heldOpen(rivalsOf(made.carcass).get('top')![0]!, short)).toBe(-300);
  });

  it('two rails at one height are at odds with each other', () => {
    const { carcass } = box({}, { top: 'rails' });
    const rivals = rivalsOf(carcass);
    const longer = (panel: string) => (kind: string, of: string) => (kind === 'length' && of === panel ? 500 : 0);
    const open = (panel: string, by: string): number =>
      Math.max(...rivals.get(panel)!.map((rival) => heldOpen(rival, longer(by))));
    expect(open('rail-front', 'rail-back')).toBe(500);
    expect(open('rail-back', 'rail-front')).toBe(500);
  });
});
