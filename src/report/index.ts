/**
 * Results told in order, as data: a report's sections and blocks, and tables that write themselves as HTML, Markdown and plain text.
 *
 * @module
 */
export type { CellKind, TableColumn, TableData } from "./tables/table-data.js";
export type { Table, TableElement } from "./tables/table.js";
export type { TableOptions } from "./tables/table-options.js";
export { tabulate, type ColumnToWrite, type TableToWrite } from "./tables/tabulate.js";
export { tabulatePolygons, type PolygonQuantity, type PolygonTableOptions } from "./tables/polygon-table.js";
export { tabulateMiters, type MiterTableOptions } from "./tables/miter-table.js";
export type { FrameTableOptions } from "./tables/frame-table-options.js";
export { tabulateLengths } from "./tables/length-table.js";
export { tabulateLays } from "./tables/lay-table.js";
export { tabulateChecks } from "./tables/check-table.js";
export { describeCorrection } from "./describe-correction.js";
export { describeFit } from "./describe-fit.js";
export { describePanel, type DescribePanelOptions } from "./describe-panel.js";
export { describePlan, type DescribePlanOptions } from "./describe-plan.js";
export { describeShopOrder } from "./describe-shop-order.js";
export { showReport, type ShownReport, type ShowReportOptions } from "./show/show-report.js";
export type { ReportOptions } from "./pen.js";
export type {
  Block,
  Fact,
  FactsBlock,
  HazardsBlock,
  ListBlock,
  Report,
  ReportSection,
  Step,
  StepsBlock,
  TableBlock,
  ToldHazard,
} from "./report.js";
