import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { generateTypes } from '../server/generate-types.ts';
import { projectRoot } from '../server/project-root.ts';

test('the committed types are what the schemas generate', async () => {
	expect(readFileSync(join(projectRoot, 'item-bank/types.ts'), 'utf8')).toBe(await generateTypes());
});
