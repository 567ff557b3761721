/** The formula of a panel as a record. */
import { formula, symbol } from '../../formula.ts'
import { supportedFrequency } from './plate.ts'

const rigidity = (means: string) => symbol(means, 'N·m', 100, 5000)

export const supportedPanel = formula({
  id: 'supported-panel',
  gives: 'lowest frequency of a panel with all edges supported',
  unit: 'Hz',
  text: 'pi/2*sqrt((Dx/a^4+2*H/(a^2*b^2)+Dy/b^4)/m)',
  symbols: {
    Dx: rigidity('bending rigidity along the first side'),
    Dy: rigidity('bending rigidity along the second side'),
    H: rigidity('rigidity in twist'),
    a: symbol('first side', 'm', 0.1, 1.5),
    b: symbol('second side', 'm', 0.1, 1.5),
    m: symbol('mass per area', 'kg/m²', 3, 40)
  },
  validity: 'thin plate in vacuum, no hole; the air of the box left out',
  source: 'leissa-plates-1969',
  checks: [
    {
      given: { Dx: 1000, Dy: 1000, H: 1000, a: 1, b: 1, m: 10 },
      gives: '31.416',
      from: 'square, simply supported: ω·a²·√(m/D) = 2π², any text on plates (from memory)'
    }
  ],
  of: ({ Dx, Dy, H, a, b, m }) =>
    supportedFrequency({ xM: a, yM: b, rigidity: { x: Dx, y: Dy, twist: H }, massPerAreaKgPerM2: m })
})

export const panelFormulas = [supportedPanel]
