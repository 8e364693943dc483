// ESLint rules for mistakes in the code. Prettier takes care of the format.
import astro from 'eslint-plugin-astro';
import ts from 'typescript-eslint';

export default ts.config(
  { ignores: ['dist/', '.almanac/', '.astro/', 'scripts/newer-node/', 'tests/bench/lighthouse/'] },
  ...ts.configs.recommended,
  ...astro.configs.recommended,
  {
    rules: {
      eqeqeq: 'error',
      'no-console': 'off',
      '@typescript-eslint/no-unused-vars': [
        'error',
        { argsIgnorePattern: '^_', varsIgnorePattern: '^_', destructuredArrayIgnorePattern: '^_', ignoreRestSiblings: true },
      ],
    },
  },
  // Tests read files of any shape.
  { files: ['tests/**'], rules: { '@typescript-eslint/no-explicit-any': 'off' } },
);
