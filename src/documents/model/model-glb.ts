/** A model as one binary file of the open standard for 3D scenes, glTF 2.0: metres, y up, the front of the box towards +z. */
import type { Document, Mesh as GltfMesh, Material, Scene } from '@gltf-transform/core'
import type { BodyKind } from '../../contract/boxes/words.ts'
import type { BoxModel, ModelBody } from './model-box.ts'

/** Linear colours and how they shine. */
const looks: Readonly<Record<BodyKind, { colour: [number, number, number, number]; metal: number; rough: number }>> = {
  board: { colour: [0.56, 0.37, 0.2, 1], metal: 0, rough: 0.8 },
  driver: { colour: [0.05, 0.05, 0.06, 1], metal: 0.4, rough: 0.5 },
  tube: { colour: [0.12, 0.13, 0.15, 1], metal: 0, rough: 0.6 },
  cup: { colour: [0.02, 0.02, 0.02, 1], metal: 0, rough: 0.5 },
  amplifier: { colour: [0.3, 0.32, 0.35, 1], metal: 0.7, rough: 0.4 }
}

/** Gap between things that are taken off one after the other [m]. */
const APART_M = 0.12

/** The box has z up and y to the rear. */
function turned(values: readonly number[]): Float32Array<ArrayBuffer> {
  const out = new Float32Array(values.length)
  for (let i = 0; i < values.length; i += 3) {
    out[i] = values[i] ?? 0
    out[i + 1] = values[i + 2] ?? 0
    out[i + 2] = -(values[i + 1] ?? 0)
  }
  return out
}

function materialsOf(document: Document): (kind: BodyKind) => Material {
  const made = new Map<BodyKind, Material>()
  return kind => {
    const { colour, metal, rough } = looks[kind]
    const material =
      made.get(kind) ??
      document.createMaterial(kind).setBaseColorFactor(colour).setMetallicFactor(metal).setRoughnessFactor(rough)
    made.set(kind, material)
    return material
  }
}

function meshOf(document: Document, { name, mesh }: ModelBody, material: Material): GltfMesh {
  const buffer = document.getRoot().listBuffers()[0] ?? document.createBuffer()
  const vectors = (values: readonly number[]) =>
    document.createAccessor().setType('VEC3').setArray(turned(values)).setBuffer(buffer)
  const few = mesh.positions.length / 3 < 0xffff
  const places = few ? new Uint16Array(mesh.triangles) : new Uint32Array(mesh.triangles)
  const primitive = document
    .createPrimitive()
    .setAttribute('POSITION', vectors(mesh.positions))
    .setAttribute('NORMAL', vectors(mesh.normals))
    .setIndices(document.createAccessor().setType('SCALAR').setArray(places).setBuffer(buffer))
    .setMaterial(material)
  return document.createMesh(name).addPrimitive(primitive)
}

function place(document: Document, scene: Scene, { name, kind, off }: ModelBody, mesh: GltfMesh, apart: boolean): void {
  const node = document.createNode(name).setMesh(mesh).setExtras({ kind })
  if (apart && off !== undefined) {
    const { way, rank } = off
    const length = APART_M * (rank + 0.5)
    node.setTranslation([way.x * length, way.z * length, -way.y * length])
  }
  scene.addChild(node)
}

/** Two scenes of the same meshes: put together, and taken apart along the ways things come off. The writer is loaded when first asked for. */
export async function modelGlb({ bodies }: BoxModel): Promise<Uint8Array> {
  const { Document, WebIO } = await import('@gltf-transform/core')
  const document = new Document()
  document.getRoot().getAsset().generator = 'Cabinbass'
  const materialOf = materialsOf(document)
  const [together, apart] = [document.createScene('put together'), document.createScene('taken apart')]
  document.getRoot().setDefaultScene(together)
  for (const body of bodies) {
    const mesh = meshOf(document, body, materialOf(body.kind))
    place(document, together, body, mesh, false)
    place(document, apart, body, mesh, true)
  }
  return await new WebIO().writeBinary(document)
}
