import { join } from 'node:path';
import { licenceList } from './dependencies/licence-list.ts';

// npm run licences: every package with its licence; those that go along with the program first. Fails on one that may not be used.

const { lines, problems } = licenceList(join(import.meta.dirname, '..'));
for (const isShipped of [true, false]) {
  const own = lines.filter((line) => line.isShipped === isShipped);
  console.log(`${isShipped ? 'In the program' : 'Tools that stay here'}: ${own.length}`);
  for (const { name, version, licence } of own) console.log(`  ${name}  ${version}  ${licence}`);
}
for (const problem of problems) console.error(problem);
console.log(`${lines.length} packages, ${problems.length} not permitted or not known`);
process.exitCode = problems.length === 0 ? 0 : 1;
