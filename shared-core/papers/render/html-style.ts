/** The look of a page: ink on light paper, as it is to be printed. */
export const PAGE_STYLE = `  body { font: 16px/1.5 system-ui, sans-serif; margin: 2rem auto; max-width: 80rem; padding: 0 1rem; color: #1b1b1b; background: #fff; }
  h2 { margin-top: 2.5rem; border-bottom: 2px solid #1b1b1b; }
  .aside { float: right; font-weight: normal; }
  nav ul { columns: 16rem; list-style: none; padding: 0; }
  nav .level-2 { padding-left: 1rem; }
  .cautions { border: 2px solid #8a5a00; padding: .5rem 1rem .5rem 2rem; }
  .figures div { display: grid; grid-template-columns: 10rem 1fr; gap: 0 1rem; padding: .1rem 0; }
  .figures dd { grid-column: 2; margin: 0; }
  .value, td { font-variant-numeric: tabular-nums; }
  .figures .value { font-size: 1.4rem; }
  .marked .value { font-weight: bold; }
  .tick { float: right; font-size: 1.4rem; }
  table { border-collapse: collapse; }
  th, td { padding: .2rem .8rem .2rem 0; text-align: left; vertical-align: top; border-bottom: 1px solid #bbb; }
  .figure { text-align: right; }
  .pictures { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(30rem, 100%), 1fr)); gap: 1rem; }
  figure { margin: 0; border: 1px solid #bbb; padding: .5rem; }
  img, figure svg { width: 100%; max-height: 30rem; object-fit: contain; }
  @media print { h2 { break-before: page; } figure, table, .cautions { break-inside: avoid; } }
`;
