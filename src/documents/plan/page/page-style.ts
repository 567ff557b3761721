/** The look of the page: warm paper, graphite, one blue for what is cut or joined, one rust for limits. No script, nothing fetched. */
import { dayTokens, nightTokens, printTokens, tokenText } from './page-colours.ts'
import { chartStyle, drawingStyle } from './page-style-drawings.ts'

const base = `
*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%;scroll-padding-top:4rem}
body{margin:0;background:var(--paper);color:var(--ink);font:400 1.0625rem/1.45 "Source Sans 3","Noto Sans","Helvetica Neue",Arial,system-ui,sans-serif;font-variant-numeric:tabular-nums lining-nums;overflow-wrap:break-word}
main,footer{max-width:73rem;margin:0 auto;padding:0 1rem}
h1,h2,h3,.great,.six b{font-family:Vollkorn,"Noto Serif",Georgia,"Times New Roman",serif;font-weight:600;line-height:1.15}
h1{font-size:clamp(1.75rem,1.3rem + 2vw,2.6rem);line-height:1.12;margin:1.4rem 0 .5rem;text-wrap:balance}
h2{font-size:1.85rem;margin:0}
h3,.first h2,.facts h2{font-size:1.15rem;margin:0 0 .4rem}
p{margin:.3rem 0;max-width:38em}
ul{margin:.3rem 0;padding-left:1.2rem;max-width:38em}
a{color:var(--blue);text-underline-offset:.15em;text-decoration-thickness:1px}
:focus-visible{outline:3px solid var(--blue);outline-offset:2px}
.skip{position:absolute;left:-99rem}
.skip:focus{position:static;display:inline-block;padding:.5rem 1rem}
.quiet,.time,.name p{color:var(--quiet)}
.imprint{display:flex;flex-wrap:wrap;justify-content:space-between;gap:0 1rem;max-width:none;color:var(--quiet);font-size:.94rem;border-bottom:1px solid var(--rule);padding:.5rem 0;margin:0}
footer a{overflow-wrap:anywhere}
.sentence{font-size:1.125rem;color:var(--quiet);margin:0 0 1rem}
input[type=checkbox]{flex:none;width:24px;height:24px;margin:0;appearance:none;background:var(--sheet);border:1.5px solid var(--ink);border-radius:2px}
input[type=checkbox]:checked{background:var(--blue) linear-gradient(var(--blue),var(--blue))}
input[type=checkbox]:checked::after{content:"✓";display:block;color:var(--sheet);font-weight:600;line-height:21px;text-align:center}
input[type=text]{width:100%;min-width:2.6rem;font:inherit;color:inherit;background:none;border:0;border-bottom:1px solid var(--ink);border-radius:0;padding:0}
`

const cover = `
.cover{display:grid;align-items:start;grid-template-columns:minmax(0,1fr);gap:1rem 2.5rem;margin-bottom:1.2rem}
.verdict{display:grid;grid-template-columns:auto minmax(0,1fr);gap:0 .9rem;border-top:3px solid var(--ink);border-bottom:1px solid var(--ink);padding:.6rem 0}
.verdict p,.verdict ul{margin:.1rem 0}
.mark{width:2.4rem;height:2.4rem;border:2px solid var(--ink);display:grid;place-items:center;font-size:1.4rem;font-weight:600;margin-top:.2rem}
.great{font-size:1.5rem}
.stop,.incomplete{border-color:var(--rust)}
.stop .mark,.incomplete .mark,.stop .great,.incomplete .great{color:var(--rust);border-color:var(--rust)}
.six{display:grid;grid-template-columns:repeat(2,minmax(0,1fr));gap:0 1.2rem;margin:.6rem 0 0}
.six div{display:flex;flex-direction:column-reverse;justify-content:flex-end;border-bottom:1px solid var(--rule);padding:.45rem 0}
.six b{font-size:1.5rem;line-height:1.1}
.six dd{margin:0}
.six dt{color:var(--quiet);font-size:.94rem;line-height:1.3}
.misses{margin:.4rem 0}.misses div{border-bottom:1px solid var(--rule);padding:.5rem 0}.misses dt{font-weight:600}.misses dd{margin:0}
.facts h2{margin-top:1rem}
.cautions{list-style:none;padding:0;margin:0;max-width:none}
.cautions li{position:relative;font-size:.969rem;line-height:1.38;padding:.4rem 0 .4rem 1.4rem;border-bottom:1px solid var(--rule)}
.cautions li::before{position:absolute;left:0;color:var(--rust);content:"▲";content:"▲" / "Caution: "}
.missed{color:var(--rust)}
.first{margin-bottom:1.4rem}
nav{position:sticky;top:0;z-index:1;background:var(--paper);border:solid var(--ink);border-width:1px 0;margin:0 -1rem;padding:0 1rem}
nav ul{display:flex;flex-wrap:wrap;justify-content:space-between;gap:0 .4rem;list-style:none;padding:0;margin:0;max-width:44rem;font-size:.875rem}
nav a{display:block;padding:.55rem 0;color:var(--ink);text-decoration:none}
`

const parts = `
main>section:not(.first){border-top:3px solid var(--ink);padding:.8rem 0 1.1rem}
#check td:nth-child(2){white-space:nowrap}
nav+section:not(.first){border-top:0}
.name{margin-bottom:.5rem}.name p,p.quiet,.body>p,.body li{font-size:.969rem;line-height:1.38}
.two,.wide-two{display:grid;grid-template-columns:minmax(0,1fr);gap:1rem 2rem}
table{border-collapse:collapse;width:100%;margin:.4rem 0 1rem;font-size:.969rem;line-height:1.35}
caption{text-align:left;font-weight:600;padding:.2rem 0}
.across{overflow-x:auto}.across table{width:auto;min-width:100%}
th,td{text-align:left;vertical-align:top;font-weight:400;padding:.35rem .6rem .35rem 0;border-bottom:1px solid var(--rule)}
thead th{color:var(--quiet);font-size:.9rem;border-bottom:1px solid var(--ink)}
.figures{text-align:right;white-space:nowrap}
th:last-child,td:last-child{padding-right:0}
#look-up th,#look-up td{overflow-wrap:anywhere;white-space:normal}
details{border-bottom:1px solid var(--rule)}
summary{cursor:pointer;list-style:none;padding:.5rem 1.6rem .5rem 0;position:relative;color:var(--blue);font-weight:600}
summary::-webkit-details-marker{display:none}
summary::after{content:"+";position:absolute;right:.2rem;top:.45rem;color:var(--blue);font-weight:600}
[open]>summary::after{content:"−"}
.barrier{color:var(--rust);display:block;line-height:1.3}
.barrier::before{content:"▲ ";content:"▲ " / "Caution: "}
.reading{display:block;line-height:1.3}
.reading::before{content:"= ";content:"= " / "Expect: ";color:var(--blue)}
.steps{list-style:none;padding:0;margin:0;font-size:1rem;line-height:1.35}
.steps>li{display:grid;grid-template-columns:auto minmax(0,1fr);gap:0 .7rem;padding:.35rem 0;border-bottom:1px solid var(--rule);break-inside:avoid;max-width:46rem}
.steps details{border:0}
.steps summary{color:inherit;font-weight:400;padding:.05rem 1.4rem .05rem 0}
.steps summary b{font-weight:600}
.steps summary::after{top:0}
.steps summary .barrier,.steps summary .reading{display:inline}
.sight{display:block;line-height:1.3}
.number{color:var(--blue);display:inline-block;min-width:1.4rem}
.time{font-size:.9rem}
.steps>li:has(:checked){opacity:.72}
.buy{list-style:none;padding:0;margin:0}
.buy li{display:grid;grid-template-columns:minmax(0,1fr) 1.6rem;border-bottom:1px solid var(--rule);align-items:start}
.buy a{text-align:right;padding:.18rem 0;font-size:.9rem}
.buy label{display:grid;grid-template-columns:auto minmax(0,1fr);gap:0 .5rem;padding:.18rem 0;font-size:.94rem;line-height:1.25;align-items:center}
.buy b,.ends{font-weight:600}
.stretch>summary .ends{display:block;color:var(--quiet);font-weight:400;font-size:.94rem;line-height:1.3}
.stretch>summary .time{color:var(--quiet);font-weight:400}
.stretch>summary{padding:.4rem 1.6rem .4rem 0;line-height:1.3}
.stretch[open]{border-bottom-color:var(--ink)}
.more{border:0;display:inline-block;vertical-align:top}
.more[open]{display:block}
.more summary{font-weight:400;font-size:.9rem;padding:0;text-decoration:underline dotted;text-underline-offset:.2em}
.more summary::after{content:none}
.more p{font-size:.9rem;color:var(--quiet);line-height:1.3}
.shop .time{font-weight:400}
footer{border-top:1px solid var(--rule);padding-top:.6rem;padding-bottom:1.2rem;color:var(--quiet);font-size:.94rem}
@media (max-width:39.9rem){h2{font-size:1.6rem}summary{padding:.4rem 1.6rem .4rem 0}table{font-size:.94rem}th,td{padding-right:.45rem}}
@media (max-width:24rem){th,td{overflow-wrap:anywhere;hyphens:auto}}
.two th,.two td{overflow-wrap:anywhere;hyphens:auto}
#wire th:first-child{overflow-wrap:normal;white-space:nowrap}
#wire td:nth-child(2){overflow-wrap:break-word}
@media (max-width:24rem){#wire table{font-size:.81rem}#wire thead th{font-size:.78rem}#wire th,#wire td{padding-right:.25rem}}
@media (min-width:22rem) and (max-width:24rem){#wire td:nth-child(2){min-width:6.3rem}#wire td:nth-child(3){min-width:5.55rem}}
@media (min-width:40rem){
@supports selector(details::details-content){.desk::details-content{display:block;content-visibility:visible;block-size:auto}.desk>summary{pointer-events:none}.desk>summary::after{content:none}}
.two{grid-template-columns:repeat(2,minmax(0,1fr))}
.buy{columns:2;column-gap:2rem}.buy li{break-inside:avoid}
.cautions{columns:2;column-gap:2.2rem}
.cautions li{break-inside:avoid}
.wide-two{grid-template-columns:minmax(0,1.4fr) minmax(0,1fr)}
.steps{columns:2;column-gap:2rem;padding-top:.3rem}
}
@media (min-width:64rem){
main,footer{padding:0 2rem}
nav{margin:0 -2rem;padding:0 2rem}
.cover{grid-template-columns:minmax(0,1.2fr) minmax(0,1fr)}
main>section:not(.first){display:grid;grid-template-columns:10.5rem minmax(0,1fr);gap:0 1.5rem}
.name{position:sticky;top:3.6rem;align-self:start}
}
`

const print = `
@media print{
:root{color-scheme:light;${tokenText(printTokens)}}
@page{margin:12.7mm}
body{font-size:9pt;line-height:1.3;background:none}
h1{font-size:22pt}h2{font-size:16pt}
nav,.skip{display:none}
body{counter-reset:figure}
figure{counter-increment:figure}
figure::after{content:"Figure " counter(figure);display:block;font-size:8pt;color:var(--quiet)}
:lang(de) figure::after{content:"Bild " counter(figure)}
main,footer{padding:0;max-width:none}
.cover{grid-template-columns:98mm minmax(0,1fr);gap:3mm 6mm}
h2,h3,caption,.name{break-after:avoid}
figure,tr,.cautions li,.verdict,.buy li{break-inside:avoid}
.steps>li{display:block;break-inside:auto;padding:.6mm 0 .6mm 6mm;text-indent:0;orphans:3;widows:3}
.steps>li>input{float:left;margin-left:-6mm}
figure.small{max-width:84mm}
table,.buy label{font-size:8.4pt}
.steps,#look-up,#look-up table{font-size:8.4pt;line-height:1.25}
ul,p{margin:.6mm 0}
th,td{padding:.8mm 2mm .8mm 0}
main>section:not(.first){display:block;padding:3mm 0}
.name{position:static}
.small text{font-size:8px}.small .wide{display:inline}.small .bubble-text{font-size:6.5px}
input[type=checkbox]{width:3.4mm;height:3.4mm}
a{color:inherit;text-decoration:none}
summary::after{display:none}
}
@supports selector(details::details-content){
@media print{
#look-up summary{display:none}
details::details-content{display:block;content-visibility:visible;block-size:auto}
}
}
`

/** The whole style sheet, as it stands in the page: its hash goes into the content policy. */
export const pageStyle = `:root{color-scheme:light dark;${tokenText(dayTokens)}}@media (prefers-color-scheme:dark){:root{${tokenText(nightTokens)}}}${base}${cover}${parts}${chartStyle}${drawingStyle}${print}`
