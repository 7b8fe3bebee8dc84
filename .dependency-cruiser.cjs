/** The floors: imports go downward only, and the rooms of floor 2 never import each other. */
const floors = [
  ['base'],
  ['kitchen'],
  ['intents', 'machine', 'planner', 'reply'],
  ['session'],
  ['household'],
  ['journal', 'bridges', 'cards', 'rehearsal', 'access'],
  ['main'],
];
const room = (names) => `^src/(${names.join('|')})/`;
const above = (floor) => floors.slice(floor + 1).flat();

/** Packages that live in one room each. */
const homes = {
  xstate: '^src/machine/',
  'chrono-node': '^src/intents/',
  'fuse.js': '^src/intents/',
  '@nlpjs/basic': '^bench/understand/',
  recheck: '^test/intents/',
  'better-sqlite3': '^src/journal/',
  pg: '^src/journal/postgres/',
  commander: '^src/main/',
  picocolors: '^src/main/',
  yaml: '^src/(cards|main)/',
  fastify: '^src/bridges/web/',
  highs: '^bench/plan/',
  '@fastify/static': '^src/bridges/web/',
  preact: '^src/page/',
  mqtt: '^src/bridges/mqtt/',
  'bonjour-service': '^src/bridges/wyoming/',
  '@fastify/rate-limit': '^src/bridges/web/',
  'prom-client': '^src/bridges/web/',
  selfsigned: '^src/access/',
  qrcode: '^src/main/',
  piscina: '^src/main/',
};

module.exports = {
  forbidden: [
    { name: 'no-circle', severity: 'error', from: {}, to: { circular: true } },
    ...floors.slice(0, -1).map((names, floor) => ({
      name: `floor-${floor}-looks-down`,
      severity: 'error',
      from: { path: room(names) },
      to: { path: room(above(floor)) },
    })),
    ...floors[2].map((name) => ({
      name: `${name}-keeps-to-itself`,
      severity: 'error',
      from: { path: room([name]) },
      to: { path: room(floors[2].filter((other) => other !== name)) },
    })),
    ...floors[5].map((name) => ({
      name: `${name}-keeps-to-itself`,
      severity: 'error',
      from: { path: room([name]) },
      to: { path: room(floors[5].filter((other) => other !== name)) },
    })),
    {
      name: 'page-is-a-leaf',
      comment: 'The page runs in a browser; the program never imports it, and it takes types only.',
      severity: 'error',
      from: { path: '^src/', pathNot: '^src/page/' },
      to: { path: '^src/page/' },
    },
    {
      name: 'page-knows-no-server',
      severity: 'error',
      from: { path: '^src/page/' },
      to: { path: '^src/', pathNot: '^src/(page|base|kitchen)/' },
    },
    {
      name: 'page-takes-types-of-the-kitchen',
      severity: 'error',
      from: { path: '^src/page/' },
      to: { path: '^src/kitchen/', dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'base-stands-alone',
      severity: 'error',
      from: { path: '^src/base/' },
      to: { dependencyTypes: ['npm', 'npm-dev', 'core'] },
    },
    {
      name: 'pure-below-the-journal',
      severity: 'error',
      from: { path: '^src/(base|kitchen|intents|machine|planner|reply|session)/' },
      to: { dependencyTypes: ['core'] },
    },
    ...Object.entries(homes).map(([name, home]) => ({
      name: `${name}-has-one-home`,
      severity: 'error',
      from: { path: '^src/', pathNot: home },
      to: { path: `^node_modules/${name}/` },
    })),
    {
      name: 'no-tests-in-the-program',
      severity: 'error',
      from: { path: '^src/' },
      to: { path: '^(test|bench|scripts)/' },
    },
  ],
  options: {
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    doNotFollow: { path: 'node_modules' },
    enhancedResolveOptions: { conditionNames: ['import', 'require', 'node', 'default', 'types'] },
  },
};
