import { readdirSync } from 'node:fs'
import { join, sep } from 'node:path'
import { cruise } from 'dependency-cruiser'
import extractConfiguration from 'dependency-cruiser/config-utl/extract-depcruise-config'
import extractTypeScriptConfiguration from 'dependency-cruiser/config-utl/extract-ts-config'
import { folderCircles } from './folder-circles.mjs'

/**
 * `npm run check:boundaries`: who may import whom, and how files are named. A check that looked at nothing
 * fails: with a TypeScript it does not know, the cruiser finds no module and says nothing.
 */
const LAYERS = ['app', 'lib', 'shared', 'seed']
const TEST_REPORTS = join('tests', '.output')
const GENERATED = join('lib', 'db', 'generated')
const FOLDERS = [...LAYERS, 'scripts', 'tests']

/** Lower case with hyphens; folders may also be the framework's: [code], (group), @slot, _private. */
const FILE_NAME = /^[a-z0-9]+(-[a-z0-9]+)*(\.(test|spec|bench|config|d))?\.[a-z0-9]+$/
const FOLDER_NAME = /^(\[{1,2}(\.{3})?[a-z][a-zA-Z0-9]*\]{1,2}|\([a-z-]+\)|@?[_.]?[a-z0-9]+(-[a-z0-9]+)*)$/

const wrong = [...(await wrongImports()), ...wrongNames()]
for (const sentence of wrong) console.error(sentence)
if (wrong.length > 0) {
  console.error(`\n${wrong.length} crossed ${wrong.length === 1 ? 'boundary' : 'boundaries'}.`)
  process.exitCode = 1
}

async function wrongImports() {
  const { ruleSet, options } = await extractRules()
  const { output } = await cruise(
    FOLDERS,
    { ...options, ruleSet, validate: true },
    {},
    {
      tsConfig: extractTypeScriptConfiguration('tsconfig.json'),
    },
  )
  const sentences = output.summary.violations.map(sentenceOf)
  for (const layer of LAYERS) {
    const looked = output.modules.filter(({ source }) => source.startsWith(`${layer}/`)).length
    if (looked === 0) sentences.push(`No module of ${layer}/ was looked at, so its boundary is not checked.`)
  }
  const imports = output.modules.flatMap(({ source, dependencies }) =>
    dependencies.map(({ resolved }) => [source, resolved]),
  )
  const shared = imports.filter((pair) => pair.every((path) => path.startsWith('shared/')))
  for (const circle of folderCircles(shared)) sentences.push(`folder-circle: ${circle.join(' → ')}`)
  console.log(
    `${output.summary.totalCruised} modules, ${output.summary.totalDependenciesCruised} imports looked at.`,
  )
  return sentences
}

async function extractRules() {
  const { options, ...ruleSet } = await extractConfiguration('./.dependency-cruiser.cjs')
  return { ruleSet, options }
}

function sentenceOf({ rule, from, to, cycle }) {
  const path = cycle ? [from, ...cycle.map(({ name }) => name)].join(' → ') : `${from} → ${to}`
  return `${rule.name}: ${path}`
}

function wrongNames() {
  return FOLDERS.flatMap((folder) => readdirSync(folder, { recursive: true, withFileTypes: true }))
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .filter((path) => !path.startsWith(GENERATED) && !path.startsWith(TEST_REPORTS) && !hasGoodName(path))
    .map((path) => `file-name: ${path} is not in lower case with hyphens`)
}

function hasGoodName(path) {
  const parts = path.split(sep)
  const file = parts.pop() ?? ''
  return FILE_NAME.test(file) && parts.every((folder) => FOLDER_NAME.test(folder))
}
