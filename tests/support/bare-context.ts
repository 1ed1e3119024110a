import vm from "node:vm";

/**
 * A context that has nothing but the language and what is given, and makes no code from text, as hosts
 * run a script. Its globals are its own: of a context made around an object every Math and Array is looked
 * up through a gate, which no host has, and which takes most of the time.
 */
export function bareContext(given: object = {}): vm.Context {
  const context = vm.createContext(vm.constants.DONT_CONTEXTIFY, {
    codeGeneration: { strings: false, wasm: false },
  }) as vm.Context;
  return Object.assign(context, given);
}
