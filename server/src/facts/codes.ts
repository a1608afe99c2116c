/**
 * The codes of all warnings, in the order of the alphabet: what an `accept` line may name. A test
 * holds this list against the checks that warn.
 */
export const WARNING_CODES: readonly string[] = ['names-alike']
