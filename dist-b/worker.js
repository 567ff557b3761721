import{createRequire as __cr}from'node:module';const require=__cr(import.meta.url);
import {
  DesignError,
  __name,
  operations
} from "./chunk-EHQBPO65.js";

// src/http/work/worker.ts
var byId = new Map(operations.map((operation) => [operation.operationId, operation]));
async function work({ operationId, request, options }) {
  let operation = byId.get(operationId);
  if (operation === void 0) throw new TypeError(`no operation ${operationId}`);
  try {
    return { answer: await operation.run(request, options) };
  } catch (error) {
    if (!(error instanceof DesignError)) throw error;
    let [first = { field: "" }, ...more] = error.faults;
    return { refusal: { code: error.code, faults: [first, ...more] } };
  }
}
__name(work, "work");
export {
  work as default
};
