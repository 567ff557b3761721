/** The whole plan as one page: no script, nothing fetched, one style element that the content policy knows by its hash. */
import { responseCharts } from '../charts/response-charts.ts'
import { element, escaped } from '../draw/svg.ts'
import { boxOverview } from '../panels/box-overview.ts'
import { cutSheetDrawings, panelDrawings } from '../panels/draw-box.ts'
import { PLAIN_PANELS, panelsToDraw } from '../panels/panel-work.ts'
import { systemWiring } from '../wiring/system-wiring.ts'
import { wiringDiagram } from '../wiring/wiring-diagram.ts'
import { clearanceTable, panelTable, volumeTable } from './page-box-tables.ts'
import { figureOf, paragraph, section } from './page-elements.ts'
import {
  cautionSection,
  commissioningSection,
  factSection,
  groundSection,
  restraintSection,
  verdictBox
} from './page-sections.ts'
import { pageStyle } from './page-style.ts'
import { billSection, buildSection } from './page-work.ts'
import type { PaperOptions, PlanPaper } from './plan-paper.ts'

function chartSection({ curves, limits }: PlanPaper): string {
  if (curves === undefined) return ''
  const figures = responseCharts(curves, limits, 'curve').map(({ svg, name }) =>
    figureOf(svg, `Chart: ${name.replace('-', ' ')}`)
  )
  return section('curves', 'Sound', element('div', { class: 'charts' }, ...figures))
}

function boxSection(plan: PlanPaper, { paper }: PaperOptions): string {
  if (plan.box === undefined) return ''
  const overview = boxOverview(plan.box, 'box-overview', paper)
  const drawn = panelsToDraw(plan.box)
  const drawings = panelDrawings(drawn, paper, 'box').map(({ svg, name }) => figureOf(svg, `Drawing of ${name}`))
  return section(
    'box',
    'The box',
    overview === undefined ? '' : figureOf(overview, 'The box from the front right and above'),
    volumeTable(plan, paper),
    panelTable(plan, paper),
    clearanceTable(plan, paper),
    drawn.length < plan.box.panels.length ? paragraph(PLAIN_PANELS) : '',
    ...drawings
  )
}

function sheetSection({ cutPlan }: PlanPaper, { paper }: PaperOptions): string {
  if (cutPlan === undefined) return ''
  const drawings = cutSheetDrawings(cutPlan, paper, 'cut').map(({ svg, name }) => figureOf(svg, `Cut plan of ${name}`))
  return section('sheets', 'Cutting the sheets', ...drawings)
}

const wiringSection = ({ wiring, coils }: PlanPaper) =>
  section(
    'wiring',
    'Wiring',
    wiring === undefined ? '' : figureOf(systemWiring(wiring), 'Wiring from battery to drivers'),
    ...(wiring?.notDrawn ?? []).map(text => paragraph(`Not drawn: ${text}`, 'warning')),
    coils === undefined ? '' : figureOf(wiringDiagram(coils), 'Wiring of the coils, terminal by terminal')
  )

/** Links to the sections that are there. */
function contents(sections: readonly string[]): string {
  const links = sections.flatMap(text => {
    const found = /^<section id="([\w-]+)"[^>]*><h2[^>]*>([^<]*)</.exec(text)
    return found === null ? [] : [element('li', {}, `<a href="#${found[1]}">${found[2]}</a>`)]
  })
  return element('nav', { 'aria-label': 'Contents' }, element('ul', {}, ...links))
}

export function planPage(plan: PlanPaper, options: PaperOptions): string {
  const sections = [
    cautionSection(plan),
    factSection(plan),
    chartSection(plan),
    boxSection(plan, options),
    sheetSection(plan, options),
    wiringSection(plan),
    billSection(plan),
    buildSection(plan),
    restraintSection(plan, options.paper),
    commissioningSection(plan),
    groundSection(plan)
  ]
  const title = escaped(plan.title)
  return [
    `<!doctype html><html lang="${options.language ?? 'en'}"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width,initial-scale=1">`,
    `<title>${title}</title><style>${pageStyle}</style></head><body><a class="skip" href="#main">Skip to the plan</a>`,
    element('header', {}, element('h1', {}, title), verdictBox(plan)),
    contents(sections),
    element('main', { id: 'main' }, ...sections),
    element(
      'footer',
      {},
      escaped(
        'Computed from what was entered; measure before you cut, and follow local codes. Work at the battery, the fuse and the fastening in the car belongs to someone who knows it.'
      )
    ),
    '</body></html>'
  ].join('')
}
