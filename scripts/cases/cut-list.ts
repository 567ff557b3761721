/** Cases of cut lists: a plain rectangular box by its outer sizes. */
import { type CaseAdapter, type Deviation, near, same } from './case.ts'

const exact = { rel: 1e-6 }

export const adapters: readonly CaseAdapter[] = [
  {
    domain: 'cut_list',
    call: ({ input }) => ({
      path: '/v1/boxes/panels',
      request: {
        outer: {
          widthMm: input.external_width_mm,
          heightMm: input.external_height_mm,
          depthMm: input.external_depth_mm
        },
        thicknessMm: input.panel_thickness_mm,
        frontLayers: input.front_panel_layers,
        board: { densityKgPerM3: input.material_density_kg_per_m3 }
      }
    }),
    compare: ({ expected }, { result }): readonly Deviation[] => [
      same('number of rows', expected.panels.length, result.panels.length),
      ...expected.panels.flatMap((panel: Record<string, number | string>, i: number) => {
        const found = result.panels[i] ?? {}
        return [
          same(`${panel.name} name`, panel.name, found.name),
          same(`${panel.name} quantity`, panel.quantity, found.quantity),
          same(`${panel.name} length`, panel.length_mm, found.lengthMm),
          same(`${panel.name} width`, panel.width_mm, found.widthMm),
          same(`${panel.name} thickness`, panel.thickness_mm, found.thicknessMm)
        ]
      }),
      near('total area', expected.total_area_m2, result.boardAreaM2, exact),
      near('internal volume', expected.internal_volume_l, result.volume.grossL, exact),
      near('mass', expected.wood_mass_kg, result.boardMassKg, exact)
    ]
  }
]
