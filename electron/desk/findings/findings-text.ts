import { phrase } from '#core/words/phrase.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { findTrial } from '#store/rows/trials.ts';
import { found } from '../found.ts';
import type { Watch } from '../handler.ts';
import { findingHandlers } from './findings.ts';
import { likingFindingHandlers } from './liking-findings.ts';
import { placeFindingHandlers } from './place-findings.ts';

type Findings = ValueOf<'findings:read'>;
type Attribute = NonNullable<Findings['analysis']>['attributes'][number];

/** A person's words as words: nothing in them may become a heading, a link or markup. */
export function plainMarkdown(words: string): string {
  return words.replace(/[\\`*_{}[\]()<>#+!|~&$-]/g, '\\$&').replace(/\s+/g, ' ');
}

function figure(value: number | null): string {
  return value === null ? '–' : value.toFixed(2).replace('-', '−');
}

function row(cells: readonly string[]): string {
  return `| ${cells.join(' | ')} |`;
}

function meansOf({ means }: Attribute): string[] {
  return [
    row([phrase`Level`, phrase`Scores`, phrase`Mean`, '95 % interval', phrase`Alike`]),
    row(['---', '---:', '---:', '---:', '---']),
    ...means.map(({ sample, n, mean, low, high, letters }) =>
      row([plainMarkdown(sample), String(n), figure(mean), phrase`${figure(low)} to ${figure(high)}`, letters ?? '–']),
    ),
  ];
}

function headlineOf({ headline }: Findings): string[] {
  if (headline === null) return [];
  return [
    `**${plainMarkdown(headline.sentence)}**`,
    ...(headline.sureness === null ? [] : [plainMarkdown(headline.sureness)]),
    ...(headline.also === null ? [] : [plainMarkdown(headline.also)]),
    ...(headline.doubts.length === 0
      ? []
      : ['## Its doubts', headline.doubts.map((doubt) => `- ${plainMarkdown(doubt)}`).join('\n')]),
  ];
}

/** Everything a trial found, as Markdown: the sentences first, then the figures behind them. */
export async function findingsText(kitchen: Kitchen, trialId: string, watch: Watch): Promise<string> {
  const input = { trial: trialId };
  const trial = found(findTrial(kitchen.read, trialId), 'trial', 'trial');
  const findings = await findingHandlers['findings:read'](kitchen, input, watch);
  const { rankings } = await placeFindingHandlers['findings:places'](kitchen, input, watch);
  const penalties = await likingFindingHandlers['findings:penalties'](kitchen, input, watch);
  const drivers = await likingFindingHandlers['findings:drivers'](kitchen, input, watch);
  const blocks: string[] = [`# ${plainMarkdown(trial.question)}`];
  if (findings.tastings === 0) blocks.push(phrase`No tasting of this trial is closed yet.`);
  blocks.push(...headlineOf(findings));
  blocks.push(...findings.takenOut.map(({ sentence }) => plainMarkdown(sentence)));
  for (const ranking of rankings) {
    blocks.push(`## Put in order: ${plainMarkdown(ranking.name)}`, plainMarkdown(ranking.sentence));
    blocks.push(...ranking.doubts.map((doubt) => `- ${plainMarkdown(doubt)}`));
  }
  for (const attribute of findings.analysis?.attributes ?? []) {
    const said = findings.sentences.find((each) => each.attribute === attribute.attribute);
    blocks.push(`## ${plainMarkdown(attribute.attribute)}`);
    if (said !== undefined) blocks.push(plainMarkdown(said.sentence));
    blocks.push(meansOf(attribute).join('\n'));
  }
  for (const { attribute, sentences } of penalties.attributes) {
    blocks.push(`## ${plainMarkdown(attribute)}: too little or too much`, ...sentences.map(plainMarkdown));
  }
  if (findings.scores.length > 0) {
    const said = drivers.needs === null ? drivers.drivers.map(({ sentence }) => sentence) : [drivers.needs];
    blocks.push('## What drives liking', ...[...said, ...drivers.together].map(plainMarkdown));
  }
  const aside = findings.tasters.filter(({ setAside }) => setAside !== null);
  if (aside.length > 0) {
    blocks.push(
      '## Not counted',
      aside.map(({ name, setAside }) => `- ${plainMarkdown(name)}: ${plainMarkdown(setAside ?? '')}`).join('\n'),
    );
    if (findings.withEverybody !== null) blocks.push(phrase`With everybody: ${plainMarkdown(findings.withEverybody)}`);
  }
  return `${blocks.join('\n\n')}\n`;
}
