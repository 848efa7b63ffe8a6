/**
 * The sheet's style: at most 190 mm wide, so that it prints on A4 and Letter alike; the margins leave 259 mm of height on the shorter, Letter. Everything that
 * a reader must see in one piece stays on one page.
 */
export const SHEET_STYLE: string = `@page{margin:10mm}
*{box-sizing:border-box}
body{max-width:190mm;margin:0 auto;color:#1d1d1b;background:#fff;font:8.5pt/1.2 Helvetica,Arial,"Liberation Sans","DejaVu Sans",sans-serif;overflow-wrap:break-word}
h1{font-size:14pt;line-height:1.2;margin:0 0 1mm}
h2{font-size:10.5pt;margin:1.2mm 0 .6mm;padding-bottom:.4mm;border-bottom:.5pt solid #1d1d1b;break-after:avoid}
h3{font-size:9pt;margin:1mm 0 .4mm;break-after:avoid}
p{margin:0 0 .6mm}
ul,ol{margin:0;padding-left:4.5mm}
svg{display:block;margin:0 auto;max-width:100%;height:auto}
figure{margin:0;break-inside:avoid}
figcaption{font-size:8pt;font-style:italic;text-align:center}
table{border-collapse:collapse;width:100%}
caption{text-align:left;font-weight:bold;padding:.5mm 0;break-after:avoid}
.names :is(th,td){overflow-wrap:anywhere}
th,td{border:.4pt solid #8a8a86;padding:.15mm 1.1mm;text-align:left;vertical-align:top}
thead th{background:#efefec}
tbody th{font-weight:normal}
td:empty{min-width:11mm}
tr,article,li,.keep{break-inside:avoid}
thead{display:table-header-group}
dl{display:flex;flex-wrap:wrap;gap:.8mm 5mm;margin:0}
dt{font-size:8pt}
dd{margin:0;font-weight:bold}
.columns{columns:2;column-gap:7mm}
p:has(+.columns){font-size:8pt}
.two{display:grid;grid-template-columns:1fr 1fr;gap:2mm 4mm;align-items:start}
.scales{display:grid;grid-template-columns:86mm 1fr;gap:2mm 4mm;align-items:start}
.frame{display:grid;grid-template-columns:82mm 1fr;gap:2mm 4mm;align-items:start}
.panel{display:grid;grid-template-columns:1fr 50mm 36mm;gap:2mm;align-items:start}
.step{display:grid;grid-template-columns:1fr 91mm;gap:2mm;align-items:start;margin-bottom:1mm}
.beside{display:grid;grid-template-columns:1fr 56mm;gap:4mm;align-items:start}
@media screen{body{padding:8mm;max-width:206mm}}
@media screen and (max-width:150mm){.columns{columns:1}.two,.scales,.frame,.panel,.step,.beside{grid-template-columns:1fr}}
@media print{body{-webkit-print-color-adjust:exact;print-color-adjust:exact}}`;
