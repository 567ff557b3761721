/** The validator brings no types of its own. */
declare module 'gltf-validator' {
  interface Report {
    readonly issues: {
      readonly numErrors: number
      readonly numWarnings: number
      readonly numInfos: number
      readonly numHints: number
    }
    readonly info: { readonly drawCallCount: number }
  }
  export function validateBytes(bytes: Uint8Array): Promise<Report>
}
