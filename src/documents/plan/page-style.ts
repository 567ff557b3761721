/** The look of the page: a calm workshop sheet, by day, by night, on a phone and on paper. No script, nothing fetched. */

const day = `--paper:#fbfaf6;--sheet:#fffefb;--text:#23272b;--quiet:#565d64;--rule:#dcd8ce;--cut:#1d4f73;--limit:#9a3a19;--care:#7a5200;--wood:#efe6d6;--hatch:#cfc7b8;--bubble-text:#fbfaf6;--c2:#a8401c;--c3:#2f6b45;--c4:#6b3f86`
const night = `--paper:#15181b;--sheet:#1b1f23;--text:#e7e4dc;--quiet:#adb4ba;--rule:#3a4046;--cut:#86bbe0;--limit:#f2a07c;--care:#e9c46a;--wood:#2d2a25;--hatch:#4a4740;--bubble-text:#15181b;--c2:#f2a07c;--c3:#8fcfa6;--c4:#cbaee6`

const page = `
*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%}
body{margin:0;background:var(--paper);color:var(--text);font:16px/1.5 ui-sans-serif,system-ui,"DejaVu Sans",Verdana,sans-serif;font-variant-numeric:tabular-nums}
main,header,nav,footer{max-width:64rem;margin:0 auto;padding:0 1rem}
header{padding-top:1.5rem}
h1{font-size:1.7rem;line-height:1.2;margin:0 0 .75rem}
h2{font-size:1.2rem;margin:2.5rem 0 .75rem;padding-top:.6rem;border-top:2px solid var(--text)}
h3{font-size:1rem;margin:1.4rem 0 .4rem}
p{margin:.4rem 0}
ul{margin:.3rem 0;padding-left:1.2rem}
a{color:var(--cut);text-underline-offset:.15em}
a:focus-visible,.scroll:focus-visible,summary:focus-visible{outline:3px solid var(--cut);outline-offset:2px}
nav ul{display:flex;flex-wrap:wrap;gap:.2rem 1rem;padding:0;list-style:none}
nav a{display:inline-block;padding:.25rem 0}
.skip{position:absolute;left:-99rem}
.skip:focus{position:static;display:inline-block;padding:.5rem 1rem}
.quiet{color:var(--quiet)}
.verdict{display:flex;gap:1rem;align-items:flex-start;border:2px solid var(--text);background:var(--sheet);padding:.8rem 1rem}
.verdict .mark{flex:none;min-width:3rem;text-align:center;font-weight:700;border:2px solid currentColor;padding:.35rem .5rem}
.verdict.stop,.verdict.incomplete{border-color:var(--limit)}
.verdict.stop .mark,.verdict.incomplete .mark{color:var(--limit)}
.verdict.take-care .mark{color:var(--care)}
.verdict p{margin:.1rem 0}
.cautions{list-style:none;padding:0}
.cautions li{display:grid;grid-template-columns:4.2rem 1fr;gap:.3rem .8rem;padding:.55rem 0;border-bottom:1px solid var(--rule)}
.level{font-weight:700;text-transform:uppercase;font-size:.8rem;letter-spacing:.04em;padding-top:.1rem}
.level.stop{color:var(--limit)}
.level.care{color:var(--care)}
.level.note{color:var(--quiet)}
table{border-collapse:collapse;width:100%;margin:.6rem 0 1.2rem;background:var(--sheet)}
caption{text-align:left;font-weight:600;padding:.3rem 0}
th,td{overflow-wrap:break-word;text-align:left;vertical-align:top;padding:.4rem .6rem;border-bottom:1px solid var(--rule)}
th{font-size:.85rem;color:var(--quiet);border-bottom:1px solid var(--text)}
.figures{text-align:right;white-space:nowrap}
#ground td:first-child{overflow-wrap:anywhere;min-width:9rem}
details{border-bottom:1px solid var(--rule)}
summary{cursor:pointer;padding:.6rem 0;font-weight:600;color:var(--cut)}
figure{margin:1rem 0}
.scroll{overflow-x:auto;border:1px solid var(--rule);background:var(--paper)}
.scroll svg{display:block;width:100%;height:auto;min-width:38rem}
.facts{display:grid;grid-template-columns:repeat(auto-fit,minmax(17rem,1fr));gap:0 2rem}
dl{margin:.2rem 0 1rem}
dl div{display:flex;justify-content:space-between;gap:1rem;border-bottom:1px solid var(--rule);padding:.25rem 0}
dt{color:var(--quiet)}
dd{margin:0;text-align:right}
dt{flex:1 1 auto}
dd{flex:0 1 auto;max-width:65%}
.whole{white-space:nowrap}
.steps{list-style:none;padding:0;margin:0}
.steps>li{display:grid;grid-template-columns:2.6rem 1fr;gap:.2rem .8rem;padding:1rem 0;border-bottom:1px solid var(--rule)}
.steps .number{font-size:1.3rem;font-weight:700;color:var(--cut)}
.steps h3{margin:0}
.warning{border-left:4px solid var(--limit);padding:.2rem .7rem;margin:.5rem 0}
.check li::marker{content:"\\2610  "}
footer{padding-top:2rem;padding-bottom:3rem;color:var(--quiet);font-size:.9rem}
.charts .scroll svg{min-width:25rem}
.charts{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,26rem),1fr));gap:0 1.2rem}
`

const shapes = `
svg .paper,svg .paper-shape,svg .hole{fill:var(--paper)}
svg .ink{fill:var(--text)}
svg .quiet{fill:var(--quiet)}
svg .limit-text{fill:var(--limit)}
svg .cut-text,svg .bubble{fill:var(--cut)}
svg .bubble-text{fill:var(--bubble-text)}
svg .wood{fill:var(--wood);stroke:var(--text)}
svg .paper-shape{stroke:var(--text)}
svg .hole,svg .rebate,svg .centre,svg .cut,svg .curve-1{stroke:var(--cut)}
svg .curve-2{stroke:var(--c2)}svg .curve-3{stroke:var(--c3)}svg .curve-4{stroke:var(--c4)}
svg .grid,svg .hatch{stroke:var(--rule)}
svg .hatch{stroke:var(--hatch)}
svg .thin,svg .mark,svg .frame{stroke:var(--quiet)}
svg .limit{stroke:var(--limit)}
svg .ink-line,svg .line{stroke:var(--text)}
svg .cut-fill{fill:var(--cut)}
`

const narrow = `
@media (max-width:40rem){
body{font-size:15px}
h1{font-size:1.4rem}
.cautions li{grid-template-columns:1fr}
table,caption,tbody,tr,td{display:block}
thead{position:absolute;left:-99rem}
tr{border-bottom:1px solid var(--text);padding:.4rem 0}
td{display:flex;justify-content:space-between;gap:1rem;border:0;padding:.15rem .2rem;text-align:right}
td:first-child{display:block;text-align:left;font-weight:600}
td:first-child::before{display:none}
td:empty{display:none}
td::before{content:attr(data-label);color:var(--quiet);text-align:left;flex:none}
.figures{white-space:normal}
}
`

const print = `
@media print{
:root{${day.replace('--paper:#fbfaf6', '--paper:#fff').replace('--sheet:#fffefb', '--sheet:#fff')}}
@page{margin:14mm}
body{font-size:10pt}
nav,.skip{display:none}
h2,h3,caption{break-after:avoid}
th,td{padding:.2rem .35rem;font-size:9pt}
.short{break-inside:avoid}
figure,tr,.steps>li,.cautions li,.verdict{break-inside:avoid}
.scroll{overflow:visible;border:0}
.scroll svg{min-width:0}
main,header,footer{max-width:none;padding:0}
a{color:inherit;text-decoration:none}
details{border:0}
}
@supports selector(details::details-content){
@media print{
summary{display:none}
details::details-content{display:block;content-visibility:visible;block-size:auto}
}
}
`

/** The whole style sheet, as it stands in the page: its hash goes into the content policy. */
export const pageStyle = `:root{color-scheme:light dark;${day}}@media (prefers-color-scheme:dark){:root{${night}}}${page}${shapes}${narrow}${print}`
