import type { ProfileSchema } from '../../../server/qti/validate/schema-set.ts';
import type { QtiVersion } from '../../../server/qti/versions.ts';

/** The schema a file of a package is checked against. */
export function schemaOf(path: string, version: QtiVersion): ProfileSchema {
	if (path !== 'imsmanifest.xml') return version;
	return version === 'qti-2.1' ? 'manifest-2.1' : 'manifest-2.2';
}
