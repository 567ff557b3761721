/** Whether anything stands too near is told without all rows, and alike. */
import { expect, it } from 'vitest'
import { assumptions } from '../../../src/domain/assume.ts'
import { boxClearances, isTouched } from '../../../src/domain/box/layout/box-clearances.ts'
import { boxContents } from '../../../src/domain/box/layout/box-contents.ts'
import { buildBox } from '../../../src/domain/box/layout/build-box.ts'
import { solveSizes } from '../../../src/domain/box/layout/solve-sizes.ts'
import { boxTask } from '../../../src/domain/box/request/box-task.ts'
import { DesignError } from '../../../src/domain/design-error.ts'
import { randomBoxes } from '../../support/random-boxes.ts'

const LESS_M = [0, 0.005, 0.01, 0.02]

it('says of random boxes what their rows say', () => {
  const next = randomBoxes(3)
  const said = { touched: 0, free: 0 }
  for (let n = 0; n < 60; n++) {
    const request = next()
    try {
      const task = boxTask(request, assumptions())
      const built = buildBox(task, solveSizes(task))
      const contents = boxContents(built, task)
      const rows = boxClearances(built, task, contents)
      for (const lessM of LESS_M) {
        const touched = rows.some(({ passes, availableM }) => !passes && availableM < lessM)
        said[touched ? 'touched' : 'free']++
        expect(isTouched(built, task, contents, lessM), JSON.stringify(request)).toBe(touched)
      }
    } catch (error) {
      if (!(error instanceof DesignError)) throw error
    }
  }
  expect(Math.min(said.touched, said.free)).toBeGreaterThan(20)
})
