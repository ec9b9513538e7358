/** A version of QTI the bank writes. */
export type QtiVersion = 'qti-2.1' | 'qti-2.2';

/** Addresses and names that differ between versions. Sources: the published 2.2 schema for 2.2; for 2.1 and for manifest metadata common practice, no source. */
export interface VersionFacts {
	readonly version: QtiVersion;
	/** Namespace of items and tests. */
	readonly namespace: string;
	/** Where the schema of items and tests is published. */
	readonly location: string;
	/** Where the schema of the manifest is published. */
	readonly manifestLocation: string;
	/** Namespace of QTI metadata in the manifest. */
	readonly metadataNamespace: string;
	readonly schemaName: string;
	readonly schemaVersion: string;
	readonly itemType: string;
	readonly testType: string;
	/** Prefix of the standard response-processing templates. */
	readonly templates: string;
}

const facts: Readonly<Record<QtiVersion, VersionFacts>> = {
	'qti-2.1': describeVersion('qti-2.1', '2p1', 'QTIv2.1 Package'),
	'qti-2.2': describeVersion('qti-2.2', '2p2', 'QTIv2.2 Package'),
};

/** Every version the bank writes, oldest first. */
export const qtiVersions: readonly QtiVersion[] = ['qti-2.1', 'qti-2.2'];

/** The addresses and names of one version. */
export function getVersionFacts(version: QtiVersion): VersionFacts {
	return facts[version];
}

/** Namespace of IMS Content Packaging manifests, shared by QTI 2.1 and 2.2. */
export const manifestNamespace = 'http://www.imsglobal.org/xsd/imscp_v1p1';
/** Namespace of IEEE learning object metadata. */
export const lomNamespace = 'http://ltsc.ieee.org/xsd/LOM';
/** Namespace of curriculum-standards metadata in 2.x manifests: common practice, no source. */
export const standardsNamespace = 'http://www.imsglobal.org/xsd/imscsmd_v1p0';
/** Namespace of xsi:schemaLocation. */
export const instanceNamespace = 'http://www.w3.org/2001/XMLSchema-instance';

function describeVersion(version: QtiVersion, mark: '2p1' | '2p2', schemaName: string): VersionFacts {
	const folder = `http://www.imsglobal.org/xsd/qti/qtiv${mark}`;
	return {
		version,
		namespace: `http://www.imsglobal.org/xsd/imsqti_v${mark}`,
		location: `${folder}/imsqti_v${mark}.xsd`,
		manifestLocation: `${folder}/qtiv${mark}_imscpv1p2_v1p0.xsd`,
		metadataNamespace: `http://www.imsglobal.org/xsd/imsqti_metadata_v${mark}`,
		schemaName,
		schemaVersion: '1.0.0',
		itemType: `imsqti_item_xmlv${mark}`,
		testType: `imsqti_test_xmlv${mark}`,
		templates: `http://www.imsglobal.org/question/qti_v${mark}/rptemplates/`,
	};
}
