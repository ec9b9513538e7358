import { manifestSchema } from '../../../server/qti/package/frame.ts';
import type { ProfileSchema } from '../../../server/qti/validate/schema-set.ts';
import type { QtiVersion } from '../../../server/qti/versions.ts';

/** The schema a file of a package is checked against. */
export function schemaOf(path: string, version: QtiVersion): ProfileSchema {
	return path === 'imsmanifest.xml' ? manifestSchema(version) : version;
}
