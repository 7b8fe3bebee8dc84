/** The floors: imports go downward only, and the rooms of floor 2 never import each other. */
const floors = [
  ['base'],
  ['kitchen'],
  ['intents', 'machine', 'planner', 'reply'],
  ['session'],
  ['household'],
  ['journal', 'bridges', 'cards', 'rehearsal'],
  ['main'],
];
const room = (names) => `^src/(${names.join('|')})/`;
const above = (floor) => floors.slice(floor + 1).flat();

/** Packages that live in one room each. */
const homes = {
  xstate: '^src/machine/',
  'chrono-node': '^src/intents/',
  'fuse.js': '^src/intents/',
  'better-sqlite3': '^src/journal/',
  commander: '^src/main/',
  picocolors: '^src/main/',
  yaml: '^src/(cards|main)/',
  fastify: '^src/bridges/web/',
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
    ...['journal', 'bridges', 'cards', 'rehearsal'].map((name) => ({
      name: `${name}-keeps-to-itself`,
      severity: 'error',
      from: { path: room([name]) },
      to: { path: room(['journal', 'bridges', 'cards', 'rehearsal'].filter((o) => o !== name)) },
    })),
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
