/** Import rules: renderer → core, app → core; renderer and app meet only in app/contract. Type imports count. */
module.exports = {
  forbidden: [
    {
      name: 'core-imports-only-core-and-zod',
      severity: 'error',
      from: { path: '^core/' },
      to: { pathNot: ['^core/', '^node_modules/zod/'] },
    },
    {
      name: 'app-never-imports-renderer',
      severity: 'error',
      from: { path: '^app/' },
      to: { path: '^renderer/' },
    },
    {
      name: 'renderer-meets-app-only-in-contract',
      severity: 'error',
      from: { path: '^renderer/' },
      to: { path: '^app/', pathNot: '^app/contract/' },
    },
    {
      name: 'contract-is-plain-data',
      severity: 'error',
      from: { path: '^app/contract/' },
      to: { pathNot: ['^core/', '^app/contract/', '^node_modules/zod/'] },
    },
    {
      name: 'renderer-uses-no-node',
      severity: 'error',
      from: { path: '^renderer/', pathNot: 'vite\\.config\\.ts$' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'nothing-imports-tests',
      severity: 'error',
      from: { path: '^(core|app|renderer)/' },
      to: { path: '^tests/' },
    },
    { name: 'no-cycles', severity: 'error', from: {}, to: { circular: true } },
    { name: 'no-unresolved', severity: 'error', from: {}, to: { couldNotResolve: true } },
  ],
  options: {
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '/dist/' },
    enhancedResolveOptions: { extensions: ['.ts', '.tsx', '.js', '.css'], conditionNames: ['import', 'node', 'types', 'default'], exportsFields: ['exports'] },
  },
};
