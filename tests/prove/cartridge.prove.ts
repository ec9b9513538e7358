import { join } from 'node:path';
import { XmlDocument } from 'libxml2-wasm';
import { expect, test } from 'vitest';
import { validateAssessment } from '../../server/cartridge/validate/validate-cartridge.ts';
import { referenceFolder } from '../helpers/reference.ts';
import { brokenRules, publishedAssessment, publishedRules } from '../server/cartridge/published-rules.ts';
import { writeWhole } from '../server/cartridge/written.ts';
import { itemKinds, randomItems } from '../server/qti/random-items.ts';

const schemas = join(referenceFolder ?? '', 'schemas');

test.each(itemKinds)(
	'5,000 distinct random items of kind %s are valid by the published schema and its rules',
	(kind) => {
		const validator = publishedAssessment(schemas);
		const rules = publishedRules(join(schemas, 'qti1.2/ccv1p1_qtiasiv1p2p1_v1p0.xsd'));
		const items = randomItems(5000, 77, kind);
		for (let from = 0; from < items.length; from += 250) {
			const { xml } = writeWhole(items.slice(from, from + 250));
			const document = XmlDocument.fromString(xml);
			validator.validate(document);
			document.dispose();
			expect(brokenRules(xml, rules)).toEqual([]);
			expect(validateAssessment(xml).problems).toEqual([]);
		}
	},
);
