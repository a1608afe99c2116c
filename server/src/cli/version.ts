/** The release; a test holds it equal to the package's. */
export const VERSION = '0.1.0'
