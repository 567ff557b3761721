/** Steps of a front that comes off: on for the leak test and the finish, off to fit the drivers, on again. */
import { say } from '../../domain/say.ts'
import type { BuildFacts } from './build-facts.ts'
import { type BuildNode, step } from './build-step.ts'

/** A front behind which drivers stand. */
export const screwFront = ({ frontScrewCount = 0 }: BuildFacts): BuildNode =>
  step({
    id: 'close-box',
    title: say('assembly.screw-the-front-on'),
    actions: [
      say('assembly.drill-front-and-strips-in-one', { screwCount: frontScrewCount }),
      say('assembly.the-front-comes-off-again')
    ],
    needs: ['wire-inside', 'colour-port', 'line-walls', 'anchor-plates'],
    tools: [say('tool.drill'), say('tool.screwdriver-or-hex-key'), say('tool.lamp')],
    uses: ['shell', 'cut-panel', 'gasket', 'driver-screw', 't-nut'],
    makes: ['closed-box'],
    minutes: 25,
    checks: [say('assembly.no-light-shows-through-any-seam')]
  })

/** Once the cones were seen to move and to come back. */
export const closeFront = step({
  id: 'close-front',
  title: say('finish.screw-the-front-on-again'),
  actions: [say('finish.nothing-lies-in-the-chamber')],
  needs: ['polarity'],
  tools: [say('tool.screwdriver-or-hex-key')],
  uses: ['finished-box', 'gasket', 'driver-screw'],
  minutes: 10,
  checks: [say('finish.the-gasket-is-pressed-evenly-all')],
  cautions: ['cones-out-of-sight']
})
