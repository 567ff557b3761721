/** The style sheet of the documentation: one column on a phone, contents beside the text where there is room. */
export const style = `:root {
  color-scheme: light dark;
  --ink: #1d2528; --quiet: #4d5b60; --ground: #fbfaf7; --panel: #f0eee8; --line: #d3cfc4; --accent: #0b5563; --warn: #8a3b12; --code: #f5f3ee;
}
@media (prefers-color-scheme: dark) {
  :root { --ink: #e6e4de; --quiet: #a9b4b6; --ground: #14191b; --panel: #1e2629; --line: #39464a; --accent: #7fd0dc; --warn: #f0a578; --code: #1a2123; }
}
* { box-sizing: border-box; }
html { scroll-padding-top: 1rem; }
body { margin: 0; background: var(--ground); color: var(--ink); font: 1rem/1.55 system-ui, "DejaVu Sans", sans-serif; overflow-wrap: anywhere; }
a { color: var(--accent); }
a:focus-visible, button:focus-visible, summary:focus-visible, select:focus-visible, textarea:focus-visible, input:focus-visible, [tabindex]:focus-visible { outline: 3px solid var(--accent); outline-offset: 2px; }
.skip { position: absolute; left: -999rem; }
.skip:focus { left: 1rem; top: 1rem; background: var(--ground); padding: .5rem; z-index: 1; }
header { display: flex; flex-wrap: wrap; gap: .25rem 1.5rem; align-items: baseline; padding: .75rem 1rem; border-bottom: 1px solid var(--line); }
.name { margin: 0; font-weight: 700; }
.name span { font-weight: 400; color: var(--quiet); }
header nav { display: flex; flex-wrap: wrap; gap: .25rem 1rem; }
[aria-current] { font-weight: 700; text-decoration: none; }
.frame { max-width: 84rem; margin: 0 auto; padding: 0 1rem 4rem; }
.contents ul { list-style: none; padding: 0; margin: .5rem 0; }
.contents li { margin: .35rem 0; }
.contents ul ul { padding-left: .9rem; font-size: .92em; }
.contents summary { font-weight: 700; cursor: pointer; padding: .5rem 0; }
h1 { font-size: 1.7rem; line-height: 1.2; margin: 1.5rem 0 1rem; }
h2 { font-size: 1.3rem; line-height: 1.25; margin: 2.5rem 0 .75rem; padding-top: .75rem; border-top: 1px solid var(--line); }
h3 { font-size: 1.08rem; margin: 1.75rem 0 .5rem; }
h4 { font-size: 1rem; margin: 1.25rem 0 .4rem; }
p, ul, ol { margin: .6rem 0; max-width: 46rem; }
code, pre, textarea { font-family: ui-monospace, "DejaVu Sans Mono", monospace; font-size: .86rem; }
pre { background: var(--code); border: 1px solid var(--line); border-radius: 4px; padding: .75rem; overflow: auto; max-height: 28rem; white-space: pre-wrap; }
p code, td code, li code { background: var(--code); padding: .05rem .25rem; border-radius: 3px; }
.scroll { overflow-x: auto; margin: .75rem 0; }
table { border-collapse: collapse; width: 100%; font-size: .92rem; }
th, td { text-align: left; vertical-align: top; padding: .4rem .6rem; border-bottom: 1px solid var(--line); overflow-wrap: break-word; }
th { color: var(--quiet); font-weight: 600; }
td:first-child { min-width: 7.5rem; }
.method { display: inline-block; font-weight: 700; color: var(--accent); min-width: 3.2rem; }
.path { font-family: ui-monospace, "DejaVu Sans Mono", monospace; }
.need { color: var(--warn); font-size: .82rem; }
.stop { border-left: 4px solid var(--warn); background: var(--panel); padding: .5rem 1rem; margin: 1rem 0; max-width: 48rem; }
details.more { margin: .6rem 0; border: 1px solid var(--line); border-radius: 4px; padding: 0 .75rem; }
details.more > summary { cursor: pointer; padding: .5rem 0; font-weight: 600; }
form { background: var(--panel); border: 1px solid var(--line); border-radius: 4px; padding: .75rem; margin: .75rem 0; }
form label { display: flex; flex-direction: column; gap: .15rem; margin: .4rem 0; font-weight: 600; font-size: .9rem; }
.choices { display: flex; flex-wrap: wrap; gap: .25rem 1rem; }
textarea, select, input { width: 100%; background: var(--ground); color: var(--ink); border: 1px solid var(--quiet); border-radius: 3px; padding: .4rem; font-weight: 400; }
select, input { font: inherit; max-width: 20rem; }
textarea { min-height: 12rem; resize: vertical; }
button { font: inherit; font-weight: 600; background: var(--accent); color: var(--ground); border: 0; border-radius: 3px; padding: .5rem 1.25rem; cursor: pointer; min-height: 2.75rem; }
output { display: block; }
output img { max-width: 100%; height: auto; background: #fff; border: 1px solid var(--line); }
output iframe { width: 100%; height: 34rem; border: 1px solid var(--line); background: #fff; }
.search { margin-top: .75rem; }
.search label { font-weight: 700; }
#found { max-height: 20rem; overflow-y: auto; }
.copied { position: relative; }
button.copy { position: absolute; right: .4rem; top: .4rem; min-height: 0; padding: .15rem .6rem; font-size: .8rem; }
tr.inside > td { border-left: 3px solid var(--accent); padding-left: 1rem; }
@media (max-width: 40rem) {
  thead { position: absolute; left: -999rem; }
  tr { display: block; padding: .5rem 0; border-bottom: 1px solid var(--line); }
  td { display: block; border: 0; padding: .1rem 0; }
}
@media (min-width: 60rem) {
  .frame { display: grid; grid-template-columns: 15rem minmax(0, 1fr); gap: 2.5rem; }
  .contents { position: sticky; top: 0; align-self: start; max-height: 100vh; overflow-y: auto; font-size: .92rem; padding-top: 1rem; }
}
`
