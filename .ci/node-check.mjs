// Every script runs on the Node that the `node` package brings; npm 12 may have blocked its install.
const major = Number(process.versions.node.split('.')[0])
if (major < 22) {
  console.error(
    `floorscribe: this is Node ${process.versions.node}, and Node 22 or later is needed. ` +
      'The development dependency "node" brings it: run "npm ci" again and see that npm did not ' +
      'block its install script (package.json allows it under "allowScripts").',
  )
  process.exit(1)
}
