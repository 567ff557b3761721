/** Sources of the build rooms. */
import type { SourceList } from './entry.ts'

export const buildSources = {
  'board-practice': { title: 'Common practice of board sellers, no source', status: 'practice' },
  'box-geometry': {
    title: 'Plane and solid geometry: shoelace area, parallel lines moved inwards, prism and cone volumes',
    status: 'derived'
  },
  'box-judgement': {
    title: 'Engineering choices of this service for clearances, targets and estimates; each is echoed where it is used',
    status: 'ours'
  },
  'box-practice': { title: 'Clearances and spacings of common workshop practice, no source', status: 'practice' },
  'en-310-622-density': {
    title: 'EN 323 density and EN 310 bending modulus as test methods; values as in the board table',
    status: 'second-hand'
  },
  'en-312-particleboard': {
    title: 'EN 312, type P2: smallest modulus in bending by thickness class',
    status: 'from memory'
  },
  'en-622-5-mdf': {
    title:
      'EN 622-5, MDF for general purposes in dry conditions, smallest modulus by thickness class, quoted in a board data sheet',
    status: 'second-hand'
  },
  'bracing-targets': {
    title: 'Engineering choices of this service for how stiff panels shall be',
    status: 'ours'
  },
  'leissa-plates-1969': {
    title: 'A. W. Leissa, Vibration of Plates, NASA SP-160 (1969), supported and orthotropic rectangular plates',
    status: 'from memory'
  },
  'leissa-plates-1973': {
    title: 'A. W. Leissa, "The free vibration of rectangular plates", J. Sound Vib. 31(3) (1973) 257-293',
    status: 'from memory'
  },
  'rectangle-in-rectangle': {
    title:
      'W. B. Carver, Solution of E1225, Amer. Math. Monthly 64 (1957) 114-116; J. E. Wetzel, Rectangles in rectangles, Math. Mag. 73 (2000) 204-211',
    status: 'from memory'
  },
  'roark-plates': {
    title:
      "W. C. Young, R. G. Budynas, Roark's Formulas for Stress and Strain, 7th ed., Table 11.4 (supported read, clamped from memory)",
    status: 'from memory'
  },
  'channel-bends': {
    title:
      'Potential flow in bent and stepped channels (conformal map; N. Marcuvitz, Waveguide Handbook, 1951, for the step, form from memory; gap table by own finite differences)',
    status: 'derived'
  },
  'fibre-density': {
    title: 'Densities of solid polyester, wool and glass from handbooks',
    status: 'from memory'
  },
  'finnish-plywood-2002': {
    title:
      'Finnish Forest Industries Federation, Handbook of Finnish Plywood (2002), mean bending moduli, as reprinted in a board data sheet',
    status: 'second-hand'
  }
} as const satisfies SourceList
