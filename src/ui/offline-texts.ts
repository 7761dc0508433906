/** Words of keeping the program itself on the device, and of what it is made of. */
import { catalogue } from './language/catalogue.ts';

export const offlineTexts = catalogue('offline', {
	update: {
		ready: 'A new version is ready. It is used when you load the page again.',
		now: 'Load it now',
		later: 'Later'
	},
	about: {
		title: 'About Wireworthy',
		version: (version: string) => `Version ${version}`,
		privacy:
			'Nothing leaves this device: the page asks no other address, there is no account, and nobody counts you. Once opened, it works without a network.',
		licences: 'What it is built with',
		lead: 'Parts of these programs and fonts are in this page. Thanks to those who wrote them.',
		licence: (licence: string) => `Licence: ${licence}`,
		failed: 'The list could not be fetched. Load the page again when there is a network.'
	}
});
