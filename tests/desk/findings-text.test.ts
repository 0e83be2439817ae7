import { describe, expect, it } from 'vitest';
import { temporaryDesk } from '#tests/store/temporary-kitchen.ts';

describe('findings:text', () => {
  it('holds the headline, its doubts and each attribute’s table', async () => {
    const test = await temporaryDesk();
    await test.ask('kitchen:sample', {});
    const trial = (await test.ask('trials:list', {})).trials.find(({ factor }) => factor === 'days')?.id ?? '';
    const { text, name } = await test.ask('findings:text', { trial });
    const { headline, analysis } = await test.ask('findings:read', { trial });
    expect(name).toMatch(/\.md$/);
    const words = text.replace(/\\(.)/g, '$1');
    expect(words).toContain(`**${headline?.sentence}**`);
    for (const doubt of headline?.doubts ?? []) expect(words).toContain(`- ${doubt}`);
    const liking = analysis?.attributes.find(({ attribute }) => attribute === 'liking');
    for (const { sample, mean } of liking?.means ?? []) {
      expect(words).toMatch(new RegExp(`\\| ${sample} \\| \\d+ \\| ${mean?.toFixed(2)} \\|`));
    }
    expect(words).not.toMatch(/NaN|undefined|null/);
  });
});
