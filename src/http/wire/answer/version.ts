/** Version of the service and of its contract; a test holds it against package.json. */
export const version = '0.1.0'
