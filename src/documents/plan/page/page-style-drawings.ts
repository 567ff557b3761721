/** How charts and drawings look on the page: repainted by class, their text as large as the page is wide. */

export const chartStyle = `
.chart{margin:0;padding-left:30px}
.chart figcaption{margin-left:-30px;line-height:1.3}
.chart figcaption b{font-weight:600;display:block}
.chart figcaption span{color:var(--quiet);font-size:.94rem}
.plot{display:block;overflow:visible;margin-top:.4rem}
.plot text{font-size:12.5px;fill:var(--ink);paint-order:stroke;stroke:var(--paper);stroke-width:3px;stroke-linejoin:round}
.plot .tick{fill:var(--quiet)}
.plot .limit-text{fill:var(--rust);stroke-width:0}
.plot .point{fill:var(--blue);font-weight:600}
.stretched *{fill:none;vector-effect:non-scaling-stroke}
.stretched .grid{stroke:var(--rule);stroke-width:1px}
.stretched .main{stroke:var(--blue);stroke-width:2.6px}
.stretched .beside{stroke:var(--quiet);stroke-width:1.6px;stroke-dasharray:5 4}
.stretched .beside-1{stroke:var(--rust);stroke-width:2px;stroke-dasharray:9 4}
.stretched .beside-2{stroke:var(--ink);stroke-width:1.8px;stroke-dasharray:2 3}
.stretched .beside-3{stroke:var(--blue);stroke-width:1.8px;stroke-dasharray:12 3 2 3}
.stretched .beside-4{stroke:var(--rust);stroke-width:1.4px;stroke-dasharray:1.5 3}
.stretched .beside-5{stroke:var(--ink);stroke-width:1.4px;stroke-dasharray:14 5}
.stretched .beside-6{stroke:var(--quiet);stroke-width:2.2px;stroke-dasharray:4 2 1 2}
.stretched .spread{fill:var(--spread)}
.stretched .beyond{fill:var(--beyond)}
.stretched .limit{stroke:var(--rust);stroke-width:2px}
.stretched .wish{stroke:var(--rust);stroke-width:1.4px;stroke-dasharray:1.5 4}
.plot .dot{fill:var(--blue);stroke:var(--paper);stroke-width:1.5px}
`

/** Text of a drawing keeps to 11 px and more by the width of its figure; its size counts in units of the drawing. */
export const drawingStyle = `
.drawing{margin:0 0 1rem;container-type:inline-size}
.drawing svg{display:block;width:100%;height:auto}
.boot{background:var(--sheet);border:1px solid var(--rule);border-radius:2px}
.boot text{font-size:12.4px}
@container (min-width:24rem){.boot text{font-size:10.6px}}
@container (min-width:32rem){.boot text{font-size:8.6px}}
@container (min-width:42rem){.boot text{font-size:7px}}
.wiring{max-width:27rem}
.small text{font-size:12.4px}
.small .wide{display:none}
@container (min-width:26rem){.small text{font-size:9.4px}}
@container (min-width:32rem){.small text{font-size:8px}.small .wide{display:inline}.small .bubble-text.wide{font-size:6.5px}}
.boot .size{paint-order:stroke;stroke:var(--sheet);stroke-width:2.5px}
svg .paper,svg .paper-shape,svg .hole{fill:var(--paper)}
.boot svg .paper{fill:var(--sheet)}
svg .seat{fill:var(--sheet);stroke:var(--quiet)}
svg .floor{fill:var(--beyond)}
svg .driver{fill:var(--driver)}
svg .mouth{fill:var(--mouth)}
svg .ink{fill:var(--ink)}
svg .quiet{fill:var(--quiet)}
svg .limit-text{fill:var(--rust)}
svg .cut-text,svg .bubble{fill:var(--blue)}
svg .bubble-text{fill:var(--paper)}
svg .wood{fill:var(--wood);stroke:var(--ink)}
svg .shade{fill:var(--shade);stroke:var(--ink)}
svg .paper-shape{stroke:var(--ink)}
svg .hole,svg .rebate,svg .centre,svg .cut{stroke:var(--blue)}
svg .hatch{stroke:var(--rule)}
svg .thin,svg .mark,svg .frame{stroke:var(--quiet)}
svg line.limit,svg polyline.limit,svg .fuse{stroke:var(--rust)}
svg .ink-fill{fill:var(--ink)}
svg .ink-line,svg .line{stroke:var(--ink)}
svg .cut-fill{fill:var(--blue)}
`
