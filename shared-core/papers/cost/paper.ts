import { tell, type Message } from '../../words/message.js';
import { asRead } from '../../words/spoken.js';
import { asItIs, type Told } from '../../words/told.js';
import { column, figuresColumn, heading, list, paragraph, type Block, type Cell, type Paper } from '../paper.js';
import { dearestFirst, moneyOf, type CostItem } from './cost.js';
import { HEADS, NO_PRICE, PARTS, say, WORK } from './messages.js';

/** What a job costs and how long it takes, what costs most first. No length is shown: tape and boards are bought by the metre. */
export function costPaper(items: readonly CostItem[], hasSaw: boolean, title: Told): Paper {
  const told = (message: Message): Told => tell(message, 'mm');
  if (items.length === 0) return { title, blocks: [paragraph(told(say.nothing()))] };
  const prices = items.map(moneyOf);
  const cost = prices.reduce<number>((sum, price) => sum + (price ?? 0), 0);
  const unpriced = prices.filter((price) => price === null).length;
  const seconds = items.reduce((sum, item) => sum + (item.kind === 'work' ? item.seconds : 0), 0);
  const isPriced = unpriced < items.length;
  return {
    title,
    blocks: [
      paragraph(told(isPriced ? say.total({ cost, seconds }) : say.timeOnly({ seconds }))),
      ...list([
        told(say.about()),
        ...(unpriced > 0 && isPriced ? [told(say.unpriced({ count: unpriced }))] : []),
        ...(hasSaw ? [] : [told(say.noSaw())]),
      ]),
      heading(2, PARTS.dearest),
      itemTable(dearestFirst(items), cost),
      ...timeBlocks(items, seconds),
    ],
  };
}

function itemTable(items: readonly CostItem[], cost: number): Block {
  return {
    kind: 'table',
    columns: [
      column(HEADS.what),
      figuresColumn(HEADS.amount),
      figuresColumn(HEADS.each),
      figuresColumn(HEADS.cost),
      figuresColumn(HEADS.share),
    ],
    rows: items.map((item): readonly Cell[] => {
      const money = moneyOf(item);
      return [
        named(item),
        amountOf(item),
        figure(item.each === null ? '' : priceFigure(item.each)),
        money === null ? NO_PRICE.none : figure(money.toFixed(2)),
        money === null || cost === 0 ? '' : shareOf(money / cost),
      ];
    }),
  };
}

/** A part of 1 in whole percents; what rounds to none is not said to be none. */
const shareOf = (part: number): Told => asItIs(part > 0 && part < 0.005 ? '< 1 %' : `${(100 * part).toFixed(0)} %`);

/** In the shop's own money, as the reader's language writes figures. */
const figure = (money: string): Told => asItIs(asRead(money));

/** Small things cost less than the smallest coin. */
const priceFigure = (price: number): string => price.toFixed(price < 0.1 ? 3 : 2);

function named(item: CostItem): Told {
  switch (item.kind) {
    case 'sheet':
      return tell(say.sheet(item), 'mm');
    case 'board-unlaid':
      return tell(say.unlaid(item), 'mm');
    case 'band':
      return tell(say.band(item), 'mm');
    case 'fitting':
      return item.name;
    case 'work':
      return asItIs(WORK[item.work]);
  }
}

function amountOf(item: CostItem): Told {
  switch (item.kind) {
    case 'sheet':
    case 'fitting':
      return asItIs(String(item.count));
    case 'board-unlaid':
      return tell(say.squareMetres({ amount: item.squareMetres }), 'mm');
    case 'band':
      return tell(say.metres({ amount: item.length / 1e6 }), 'mm');
    case 'work':
      return tell(say.time(item), 'mm');
  }
}

/** The work alone, what takes longest first. */
function timeBlocks(items: readonly CostItem[], seconds: number): readonly Block[] {
  const work = items.filter((item) => item.kind === 'work').toSorted((a, b) => b.seconds - a.seconds);
  if (work.length === 0) return [];
  return [
    heading(2, PARTS.time),
    {
      kind: 'table',
      columns: [column(HEADS.what), figuresColumn(HEADS.time), figuresColumn(HEADS.share)],
      rows: work.map((item) => [asItIs(WORK[item.work]), tell(say.time(item), 'mm'), shareOf(item.seconds / seconds)]),
    },
  ];
}
