/** Cautions of the box rooms. */
import type { CautionCatalogue } from './entry.ts'

export const boxCautions = {
  'box-clearance': {
    level: 'care',
    meaning: 'Two things in or on the box come closer than they should; the figure says by how much. Move one of them.',
    basis: 'common practice, no source'
  },
  'driver-hits-box': {
    level: 'stop',
    meaning:
      'A driver, a port or a fitting does not go into the box: it would take the place of a wall or of another thing inside, or its hole does not fit its panel.',
    basis: 'geometry of the sizes given'
  },
  'no-way-in': {
    level: 'care',
    meaning:
      'No straight move brings the named parts into their places, whatever is put on before them: a tube that bends through the window of a brace, a plate behind what is wider than the opening. Turn them in, if they can be, or move one of them.',
    basis:
      'geometry of the sizes given: each thing taken off straight along the normal of its board or an axis of the box'
  },
  'out-of-reach': {
    level: 'care',
    meaning:
      'No hole of a driver lets a straight arm reach the named parts once the box is closed: a slot, a brace or a divider is in the way, or the hole is too small. Fasten, wire and seal them before, and test them; a driver among them comes out again only where a panel is screwed on over a gasket.',
    basis:
      'geometry of the sizes given: a forearm of 90 mm narrowing to fingers of 40 mm, 600 mm long (common practice, no source)'
  },
  'cone-needs-room': {
    level: 'note',
    meaning:
      'A driver does not fire from the front, and what it fires at may stand near: floor, trim, load. The free ring round the cone should be no smaller than the cone; nearer, it is throttled and the load on it changes. No limit of the space leaves this room by itself. In the bottom it is `care`: it needs feet.',
    basis:
      'derived: the ring π·d·h is as large as the cone π·d²/4 at h = d/4; that it should be is common practice, no source'
  },
  'driver-volume-missing': {
    level: 'care',
    meaning:
      'The volume a driver takes is neither given nor can it be estimated, so it counts as nothing. Give it, or give cone area, mounting depth, magnet and cut-out.',
    basis: 'engineering choice of this service'
  },
  'driver-volume-estimated': {
    level: 'note',
    meaning: 'The volume a driver takes was estimated from its outline; such an estimate is right within about 30 %.',
    basis: 'cone and cylinder of the data sheet sizes, shares estimated'
  },
  'port-place-shift': {
    level: 'note',
    meaning:
      'The walls round the inner mouth of a slot lengthen its end beyond that of a free mouth, so that the box tunes lower than the plain rule says. The figure is for two dimensions; measure and trim.',
    basis: 'step in a channel (form from memory) and own finite differences, within some 10 %'
  },
  'port-mouth-near-wall': {
    level: 'care',
    meaning:
      'A mouth nearer to a wall than its own smallest dimension is throttled; move the wall or shorten the port.',
    basis: 'common practice, no source; the shift of tuning is computed'
  },
  'port-short-leg': {
    level: 'note',
    meaning: 'The length of a mitred bend holds for straight legs of at least one slot height on both sides.',
    basis: 'validity of the potential flow figure'
  },
  'panel-in-band': {
    level: 'care',
    meaning:
      'A panel resonates so low that the box would sound with it. Brace it, or use a thicker or a second board; the figure is for edges free to turn, the lower bound.',
    basis: 'engineering choice of this service: 1.5 times the top of the band'
  },
  'panels-move-air': {
    level: 'note',
    meaning:
      'The panels flex so much under the pressure of the box that they take away from the bass; brace them or double the board.',
    basis: 'engineering choice of this service: 2 % of the air the cones move'
  },
  'thick-plate': {
    level: 'note',
    meaning: 'Thin-plate theory overstates the frequency of a board thicker than about an eighth of its shorter side.',
    basis: 'validity of thin-plate theory, from memory'
  },
  'standing-wave-near-band': {
    level: 'note',
    meaning:
      'A standing wave along the longest inside falls not far above the band; line both ends, or make the box shorter that way.',
    basis: 'engineering choice of this service: 2.5 times the top of the band'
  },
  'inside-sizes-alike': {
    level: 'note',
    meaning:
      'Two inside sizes are nearly equal, so that their standing waves coincide. In the bass range this does not matter.',
    basis: 'engineering choice of this service: a tenth'
  },
  'box-over-limit': {
    level: 'stop',
    meaning: 'The box is larger than the space it was given; the figure says by how much.',
    basis: 'the limits in the request'
  },
  'box-not-through-opening': {
    level: 'stop',
    meaning:
      'No face of the box passes the opening, straight or tilted. Build it in two parts, or ask for another shape.',
    basis: 'rectangle in a rectangle (Carver 1957, Wetzel 2000, from memory)'
  },
  'box-tilted-through-opening': {
    level: 'note',
    meaning:
      'The box passes the opening only tilted; whether it can be turned upright inside the vehicle is not checked.',
    basis: 'rectangle in a rectangle (Carver 1957, Wetzel 2000, from memory)'
  },
  'box-hits-keep-out': {
    level: 'stop',
    meaning: 'The box stands nowhere on the floor of the boot clear of the wheel arches and other blocks given.',
    basis: 'the blocks in the request'
  },
  'heavy-box': {
    level: 'note',
    meaning:
      'A box above 16 kg takes more than one person over a boot sill. Above 33 kg, a `care`, it is more than two should lift: carry it empty, slide it on a board and fit the drivers when it stands in the car.',
    basis:
      'HSE lifting guidance (second-hand): 25 kg for men and 16 kg for women near the body at waist height, two people two thirds of their sum, three half of it; filters, not limits',
    sources: ['lifting-hse']
  }
} as const satisfies CautionCatalogue
