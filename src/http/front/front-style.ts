/** The look of the front door: that of the page it leads to. */
import { dayTokens, nightTokens, tokenText } from '../../documents/plan/page/page-colours.ts'

export const frontStyle = `:root{color-scheme:light dark;${tokenText(dayTokens)}}@media (prefers-color-scheme:dark){:root{${tokenText(nightTokens)}}}
*{box-sizing:border-box}
body{margin:0;background:var(--paper);color:var(--ink);font:400 1.0625rem/1.45 "Source Sans 3","Noto Sans","Helvetica Neue",Arial,system-ui,sans-serif;font-variant-numeric:tabular-nums lining-nums;overflow-wrap:break-word}
header,main,footer{max-width:73rem;margin:0 auto;padding:0 1rem}
header{display:flex;flex-wrap:wrap;justify-content:space-between;gap:.3rem 1rem;padding-top:.8rem;padding-bottom:.6rem;border-bottom:1px solid var(--rule)}
header a{margin-right:.8rem;display:inline-block;padding:.15rem 0}
h1,h2,.name{font-family:Vollkorn,"Noto Serif",Georgia,"Times New Roman",serif;font-weight:600;line-height:1.15;margin:0}
.name{font-size:1.15rem}
h1{font-size:clamp(1.75rem,1.3rem + 2vw,2.6rem);margin:1.4rem 0 .6rem;max-width:22em;text-wrap:balance}
h2{font-size:1.5rem}
p{margin:.3rem 0;max-width:38em}
a,summary{color:var(--blue);text-underline-offset:.15em}
:focus-visible{outline:3px solid var(--blue);outline-offset:2px}
.skip{position:absolute;left:-99rem}.skip:focus{position:static;display:inline-block;padding:.5rem 1rem}
.lead,.line,.mark{color:var(--quiet)}
fieldset{border:0;border-top:3px solid var(--ink);margin:1.4rem 0 0;padding:.8rem 0 0;min-width:0}
legend{padding:0;float:left;width:100%}
fieldset>*{clear:both}
.fields{display:grid;grid-template-columns:repeat(2,minmax(0,1fr));gap:.9rem 1rem}
.field{margin:0;display:flex;flex-direction:column;justify-content:flex-end}
.field label{font-weight:600;line-height:1.25}
.mark{font-size:.875rem;line-height:1.3}
.box{display:flex;align-items:center;background:var(--sheet);border:1.5px solid var(--ink);border-radius:2px;margin-top:.2rem}
.box:focus-within{outline:3px solid var(--blue);outline-offset:2px}
.box input:focus-visible{outline:0}
input[type=text],select{font:inherit;color:inherit;background:none;border:0;width:100%;min-width:0;min-height:2.6rem;padding:.3rem .6rem}
select{background:var(--sheet);border:1.5px solid var(--ink);border-radius:2px;margin-top:.2rem}
.unit{padding-right:.6rem;color:var(--quiet)}
.fault{color:var(--rust);font-size:.94rem;line-height:1.3}
.fault::before{content:"▲ ";content:"▲ " / "Mend: "}
.box:has([aria-invalid]),select[aria-invalid]{border-color:var(--rust)}
.faults{border:solid var(--rust);border-width:3px 0 1px;padding:.5rem 0;margin:1rem 0}
.choice{display:flex;gap:.6rem;align-items:flex-start;margin:.35rem 0}
.choice input{flex:none;width:24px;height:24px;margin:0;accent-color:var(--blue)}
details{margin-top:1rem}summary{cursor:pointer;font-weight:600;padding:.3rem 0}
button{font:inherit;font-weight:600;color:var(--sheet);background:var(--blue);border:0;border-radius:2px;padding:.7rem 1.6rem;cursor:pointer}
.send{margin-top:1.6rem;border-top:3px solid var(--ink);padding-top:1rem;max-width:none}
.sheet{border-collapse:collapse;background:var(--sheet);border:1px solid var(--rule);font-size:.94rem;width:100%;max-width:22rem;margin:1rem 0 0}
caption{text-align:left;font-weight:600;padding:.3rem 0}
.sheet th,.sheet td{padding:.2rem .6rem;border-bottom:1px solid var(--rule);text-align:left;font-weight:400}
.sheet th{color:var(--blue);font-weight:600}.sheet td{text-align:right;white-space:nowrap}.sheet .idle th,.sheet .idle td{color:var(--quiet);font-weight:400}
figure{margin:1rem 0 0;max-width:20rem}figure svg{display:block;width:100%;height:auto}
svg .paper{fill:var(--paper)}svg .floor{fill:var(--beyond)}svg .seat{fill:var(--sheet);stroke:var(--quiet)}svg .hatch{stroke:var(--rule)}
svg .measure{stroke:var(--blue);stroke-width:1.4}svg .measured{fill:var(--blue)}svg .quiet{fill:var(--quiet)}
footer{border-top:1px solid var(--rule);margin-top:2rem;padding-top:1rem;padding-bottom:2.5rem;color:var(--quiet);font-size:.94rem}
@media (min-width:40rem){.fields{grid-template-columns:repeat(3,minmax(0,1fr))}.choices{columns:2;column-gap:2rem}.choice{break-inside:avoid}}
@media (min-width:64rem){
header,main,footer{padding-left:2rem;padding-right:2rem}
fieldset{padding-left:12rem}
legend{width:10.5rem;margin-left:-12rem}
fieldset>.line{float:left;clear:left;width:10.5rem;margin-left:-12rem}
fieldset>.inner{clear:none}
.inner{display:grid;grid-template-columns:minmax(0,1fr);gap:0 1.5rem;min-height:5rem}
#driver .inner,#boot .inner{grid-template-columns:minmax(0,1fr) 15rem}
#amplifier .fields,#supply .fields{grid-template-columns:repeat(4,minmax(0,1fr))}
.sheet,figure{margin:0;align-self:start}
}
`
