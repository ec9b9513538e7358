/** Namespace of QTI 1.2.1 as Common Cartridge 1.1 profiles it. Source: the published schema ccv1p1_qtiasiv1p2p1_v1p0.xsd (31 October 2010). */
export const assessmentNamespace = 'http://www.imsglobal.org/xsd/ims_qtiasiv1p2';

/** Namespace of manifests. Source: the published schema ccv1p1_imscp_v1p2_v1p0.xsd (31 January 2011). */
export const cartridgeNamespace = 'http://www.imsglobal.org/xsd/imsccv1p1/imscp_v1p1';

/** Namespace of metadata of a manifest. Source: the published schema ccv1p1_lommanifest_v1p0.xsd. */
export const cartridgeLomNamespace = 'http://ltsc.ieee.org/xsd/imsccv1p1/LOM/manifest';

/** Folder the published schemas lie in. Source: the addresses under which the manifest's schema imports the others. */
const schemaFolder = 'http://www.imsglobal.org/profile/cc/ccv1p1';

/** Where the schema of assessments is published; the folder is that of the manifest's imports. */
export const assessmentLocation = `${schemaFolder}/ccv1p1_qtiasiv1p2p1_v1p0.xsd`;

/** Where the schema of manifests is published; the folder is that of the manifest's imports. */
export const cartridgeLocation = `${schemaFolder}/ccv1p1_imscp_v1p2_v1p0.xsd`;

/** Type of the resource that is the test. Source: the published schema of manifests. */
export const assessmentType = 'imsqti_xmlv1p2/imscc_xmlv1p1/assessment';

/** Name of the response of every question, and of its only outcome. */
export const questionVariables = { response: 'RESPONSE', score: 'SCORE' } as const;

/** What a right answer sets SCORE to: the profile counts in percent. */
export const wholeScore = 100;

/** How the profile calls what a question asks. Source: rules 2b and 3 to 8 of the published schema. */
export const questionTypes = {
	choice: 'cc.multiple_choice.v0p1',
	several: 'cc.multiple_response.v0p1',
	entry: 'cc.fib.v0p1',
	text: 'cc.essay.v0p1',
} as const;
