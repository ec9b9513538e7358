/** A version of QTI the bank writes. */
export type QtiVersion = 'qti-2.1' | 'qti-2.2' | 'qti-3.0';

/**
 * Addresses and names that differ between versions. Sources: the published 2.2 schema for 2.2; the published 3.0 examples and
 * qti-facts.md of the reference folder for 3.0; for 2.1 and for manifest metadata of 2.x common practice, no source.
 */
export interface VersionFacts {
	readonly version: QtiVersion;
	/** Namespace of items and tests. */
	readonly namespace: string;
	/** Where the schema of items and tests is published. */
	readonly location: string;
	/** Where the schema of the manifest is published. */
	readonly manifestLocation: string;
	/** Namespace of the manifest, which is IMS Content Packaging. */
	readonly manifestNamespace: string;
	/** Namespace of curriculum-standards metadata in the manifest. */
	readonly standardsNamespace: string;
	/** Namespace of QTI metadata in the manifest. */
	readonly metadataNamespace: string;
	readonly schemaName: string;
	readonly schemaVersion: string;
	readonly itemType: string;
	readonly testType: string;
	/** Resource type of shared stimuli; undefined where the version has none that exports use. */
	readonly stimulusType: string | undefined;
	/** The address of a standard response-processing template is this, its name, and the ending. */
	readonly templates: string;
	readonly templateEnding: '' | '.xml';
	/** Elements and attributes are named as QTI 3.0 does; see vocabulary.ts. */
	readonly hasNewerNames: boolean;
}

const facts: Readonly<Record<QtiVersion, VersionFacts>> = {
	'qti-2.1': describeVersion('qti-2.1', '2p1', 'QTIv2.1 Package'),
	'qti-2.2': describeVersion('qti-2.2', '2p2', 'QTIv2.2 Package'),
	'qti-3.0': {
		version: 'qti-3.0',
		namespace: 'http://www.imsglobal.org/xsd/imsqtiasi_v3p0',
		location: 'https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqti_asiv3p0_v1p0.xsd',
		manifestLocation: 'https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqtiv3p0_imscpv1p2_v1p0.xsd',
		manifestNamespace: 'http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1',
		standardsNamespace: 'http://www.imsglobal.org/xsd/qti/qtiv3p0/imscsmd_v1p1',
		metadataNamespace: 'http://www.imsglobal.org/xsd/imsqti_metadata_v3p0',
		schemaName: 'QTI Package',
		schemaVersion: '3.0.0',
		itemType: 'imsqti_item_xmlv3p0',
		testType: 'imsqti_test_xmlv3p0',
		stimulusType: 'imsqti_stimulus_xmlv3p0',
		templates: 'https://purl.imsglobal.org/spec/qti/v3p0/rptemplates/',
		templateEnding: '.xml',
		hasNewerNames: true,
	},
};

/** Every version the bank writes, oldest first. */
export const qtiVersions: readonly QtiVersion[] = ['qti-2.1', 'qti-2.2', 'qti-3.0'];

/** The address of a standard response-processing template in a version. */
export function templateAddress(version: QtiVersion, name: 'match_correct' | 'map_response'): string {
	const { templates, templateEnding } = facts[version];
	return templates + name + templateEnding;
}

/** The addresses and names of one version. */
export function getVersionFacts(version: QtiVersion): VersionFacts {
	return facts[version];
}

/** Namespace of IEEE learning object metadata. */
export const lomNamespace = 'http://ltsc.ieee.org/xsd/LOM';
/** Namespace of xsi:schemaLocation. */
export const instanceNamespace = 'http://www.w3.org/2001/XMLSchema-instance';

function describeVersion(version: QtiVersion, mark: '2p1' | '2p2', schemaName: string): VersionFacts {
	const folder = `http://www.imsglobal.org/xsd/qti/qtiv${mark}`;
	return {
		version,
		namespace: `http://www.imsglobal.org/xsd/imsqti_v${mark}`,
		location: `${folder}/imsqti_v${mark}.xsd`,
		manifestLocation: `${folder}/qtiv${mark}_imscpv1p2_v1p0.xsd`,
		manifestNamespace: 'http://www.imsglobal.org/xsd/imscp_v1p1',
		standardsNamespace: 'http://www.imsglobal.org/xsd/imscsmd_v1p0',
		metadataNamespace: `http://www.imsglobal.org/xsd/imsqti_metadata_v${mark}`,
		schemaName,
		schemaVersion: '1.0.0',
		itemType: `imsqti_item_xmlv${mark}`,
		testType: `imsqti_test_xmlv${mark}`,
		stimulusType: undefined,
		templates: `http://www.imsglobal.org/question/qti_v${mark}/rptemplates/`,
		templateEnding: '',
		hasNewerNames: false,
	};
}
