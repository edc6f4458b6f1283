/** Types of every route, from openapi.json. Written by `npm run openapi`; not edited by hand. */
export interface paths {
    "/v1/sign-in": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Sign in with e-mail and password */
        post: {
            parameters: {
                query?: {
                    /** @description where the refresh token is answered */
                    refresh?: "body" | "cookie";
                };
                header?: Record<string, string | undefined>;
                path?: never;
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["SignInInput"];
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Tokens"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/sign-in/refresh": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Renew the access token
         * @description By the cookie, or by refreshToken in the body. A refresh token works once.
         */
        post: {
            parameters: {
                query?: {
                    /** @description where the refresh token is answered */
                    refresh?: "body" | "cookie";
                };
                header?: Record<string, string | undefined>;
                path?: never;
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["RefreshInput"];
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Tokens"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/sign-out": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** End this sign-in and every token of it */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path?: never;
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                204: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content?: never;
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/me": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** Who I am and what I may do */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path?: never;
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Me"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** My language and pressure unit */
        patch: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path?: never;
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["MyPreferencesInput"];
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Me"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        trace?: never;
    };
    "/v1/me/second-factor": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        /** Keep the second factor */
        put: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path?: never;
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["SecondFactorKeptInput"];
                };
            };
            responses: {
                /** @description Default Response */
                204: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content?: never;
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        /** A new second factor, kept once a code of it is sent */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path?: never;
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["SecondFactor"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/owner-setup": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Make the first owner, by the one-time link of the server’s console */
        post: {
            parameters: {
                query?: {
                    /** @description where the refresh token is answered */
                    refresh?: "body" | "cookie";
                };
                header?: Record<string, string | undefined>;
                path?: never;
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["OwnerSetupInput"];
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Tokens"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/owner-setup/way-back-in": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** A new password, by the one-time link of the server’s console */
        post: {
            parameters: {
                query?: {
                    /** @description where the refresh token is answered */
                    refresh?: "body" | "cookie";
                };
                header?: Record<string, string | undefined>;
                path?: never;
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["WayBackInInput"];
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Tokens"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/tablets/enrol": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Become a tablet, by a one-time code */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path?: never;
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["EnrolInput"];
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Enrolled"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/tablets/people": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /**
         * Who can sign in on this tablet
         * @description Sent with the tabletToken.
         */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path?: never;
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            items: components["schemas"]["PersonRef"][];
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/tablets/take-over": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Sign a person in on this tablet by PIN
         * @description Sent with the tabletToken.
         */
        post: {
            parameters: {
                query?: {
                    /** @description where the refresh token is answered */
                    refresh?: "body" | "cookie";
                };
                header?: Record<string, string | undefined>;
                path?: never;
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["TakeOverInput"];
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Tokens"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/garages/{garage}/tablets": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** Tablets of a garage */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    garage: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            items: components["schemas"]["Tablet"][];
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        /** Prepare a tablet for a bay */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    garage: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["NewTabletInput"];
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["TabletMade"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/tablets/{tablet}/enrolment-code": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** A new one-time code; the device before it ends */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    tablet: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["TabletMade"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/tablets/{tablet}/revocation": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Take a tablet out of use */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    tablet: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Tablet"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/apps": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** Outside apps */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path?: never;
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            items: components["schemas"]["OutsideApp"][];
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        /** Let an outside app in */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path?: never;
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["NewOutsideAppInput"];
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["OutsideAppMade"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/apps/{app}/secret": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** A new secret; the old one ends */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    app: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["OutsideAppMade"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/apps/{app}/revocation": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Shut an outside app out */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    app: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["OutsideApp"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/token": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * An access token for an outside app (OAuth 2.0 client credentials, RFC 6749)
         * @description Client id and secret in the header (Basic) or in the form. Refusals also carry `error` as RFC 6749 section 5.2 names it.
         */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path?: never;
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/x-www-form-urlencoded": components["schemas"]["TokenRequestInput"];
                    "application/json": components["schemas"]["TokenRequestInput"];
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["TokenAnswer"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/keys": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** Public keys of access tokens (JWK set, RFC 7517) */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path?: never;
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["KeySet"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/events": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /**
         * Live events of the caller’s garages
         * @description Server-sent events, each a LiveEvent as JSON. After a break send the id of the last one as Last-Event-ID.
         */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path?: never;
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/jobs/{job}/sessions": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** The sessions of a job with their readings */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            items: components["schemas"]["Session"][];
                            next: null;
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        /**
         * Open a session
         * @description Conditions and instruments hold for every reading in it. Other ones open another session; several may be open. The same `id` again answers 200 with the session that is there.
         */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["NewSessionInput"];
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Session"];
                    };
                };
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Session"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/sessions/{session}": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** One session with its readings */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    session: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Session"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/sessions/{session}/close": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Close a session
         * @description Closing a closed session changes nothing.
         */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    session: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Session"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/sessions/{session}/readings/{reading}": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        /**
         * Keep a reading, a correction or a withdrawal
         * @description The id is made by the client (UUID version 7). The same body again answers 200 as the first time, another body 409. Corrections, moves to another cylinder, session or job, and placing a late reading are new readings that name the one they replace, with a reason. Into a closed session: 409, or with `offline` kept unplaced.
         */
        put: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    session: string;
                    /** @description identifier made by the client, a UUID version 7 */
                    reading: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["ReadingPutInput"];
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["ReadingKept"];
                    };
                };
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["ReadingKept"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/jobs/{job}/unplaced-readings": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** Late readings that wait to be placed */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            items: components["schemas"]["StoredReading"][];
                            next: null;
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/jobs/{job}/photos": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** Photos of a job, each with the reading it belongs to */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            items: components["schemas"]["Photo"][];
                            next: null;
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/readings/{reading}/photos/{photo}": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        /**
         * Attach a photo to a reading
         * @description The id is made by the client (UUID version 7). The same body again answers 200 as the first time, another body 409. The picture is told by its content, turned upright, made no larger than 2048 pixels on its longest side and kept as JPEG with nothing in it but the picture. At most 50 million pixels; at most 12 photos a reading. On a job that is over: 409, unless `offline`.
         */
        put: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    reading: string;
                    /** @description identifier made by the client, a UUID version 7 */
                    photo: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["PhotoPutInput"];
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Photo"];
                    };
                };
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Photo"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/photos/{photo}/picture": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** The picture of a photo, JPEG */
        get: {
            parameters: {
                query?: {
                    /** @description small: at most 320 pixels on its longest side */
                    size?: "full" | "small";
                };
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    photo: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description the picture */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "image/jpeg": string;
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/photos/{photo}/withdrawal": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Withdraw a photo
         * @description It stays, marked as withdrawn. Withdrawn again, the first reason stands.
         */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    photo: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["PhotoWithdrawalInput"];
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Photo"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/evaluations": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Evaluate a case; nothing is kept
         * @description The same schemas and the same answers as the command line. A case that is not as the contract asks is answered 422 with every bad field.
         */
        post: {
            parameters: {
                query?: {
                    /** @description `false` leaves out next tests and reasons, and is answered sooner */
                    ranking?: "true" | "false";
                };
                header?: Record<string, string | undefined>;
                path?: never;
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["CaseInput"];
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Evaluation"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/comparisons": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Compare two cases of one engine, before and after work; nothing is kept
         * @description A pair that is not as the contract asks is answered 422 with every bad field.
         */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path?: never;
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["ComparisonRequestInput"];
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Comparison"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/jobs/{job}/evaluation": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** Evaluate a job as it stands */
        get: {
            parameters: {
                query?: {
                    /** @description `false` leaves out next tests and reasons, and is answered sooner */
                    ranking?: "true" | "false";
                };
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["JobEvaluation"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/evaluations/{evaluation}": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** An evaluation as it was kept when somebody decided on it */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    evaluation: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["StoredEvaluation"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/jobs/{job}/suggestions": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** Suggested tests that were taken or declined */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            items: components["schemas"]["SuggestionDecision"][];
                            next: null;
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        /** Take a suggested test, or decline it with a reason */
        post: {
            parameters: {
                query?: never;
                header?: {
                    /** @description the same key and body again are answered as the first time; 8 to 200 characters */
                    "idempotency-key"?: string;
                };
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["NewSuggestionDecisionInput"];
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["SuggestionDecision"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/engines/{engine}/trail": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /**
         * The trail of an engine, oldest first
         * @description Entries about quotes, approvals and authorisations show another garage only kind, time and hash.
         */
        get: {
            parameters: {
                query?: {
                    after?: string;
                    limit?: number;
                };
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    engine: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            items: components["schemas"]["TrailEntry"][];
                            next: string | null;
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/jobs/{job}/trail": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** What a job wrote into the trail, oldest first */
        get: {
            parameters: {
                query?: {
                    after?: string;
                    limit?: number;
                };
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            items: components["schemas"]["TrailEntry"][];
                            next: string | null;
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/engines/{engine}/trail/check": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** Check the trail of an engine: every hash is computed anew */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    engine: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["TrailCheck"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/jobs/{job}/quote": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** Draft, versions and answers */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Quote"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/jobs/{job}/quote/draft": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        /**
         * Keep the draft
         * @description If-Match with the draft’s ETag, or `If-None-Match: *` to start one.
         */
        put: {
            parameters: {
                query?: never;
                header?: {
                    /**
                     * @description the ETag that the edit is based on; without it 428 where there is something to edit, and 412 when it is not the present one
                     * @example "3"
                     */
                    "if-match"?: string;
                    /** @description `*` instead of if-match: starts the first one */
                    "if-none-match"?: string;
                };
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["QuoteDraftPutInput"];
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["QuoteDraft"];
                    };
                };
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["QuoteDraft"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        post?: never;
        /**
         * Drop the draft
         * @description Needs If-Match.
         */
        delete: {
            parameters: {
                query?: never;
                header?: {
                    /**
                     * @description the ETag that the edit is based on; without it 428 where there is something to edit, and 412 when it is not the present one
                     * @example "3"
                     */
                    "if-match"?: string;
                };
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                204: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content?: never;
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/jobs/{job}/quote/suggested-lines": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** Lines that the evidence carries, priced from the catalogue */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            items: components["schemas"]["SuggestedLine"][];
                            next: string | null;
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/jobs/{job}/quote/versions": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Send the draft to the manager
         * @description The draft becomes a version that is never edited. With If-Match it must still be the draft you saw; an Idempotency-Key is taken.
         */
        post: {
            parameters: {
                query?: never;
                header?: {
                    /**
                     * @description the ETag that the edit is based on; without it 428 where there is something to edit, and 412 when it is not the present one
                     * @example "3"
                     */
                    "if-match"?: string;
                    /** @description the same key and body again are answered as the first time; 8 to 200 characters */
                    "idempotency-key"?: string;
                };
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody?: {
                content: {
                    "application/json": Record<string, never> | null;
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["QuoteVersion"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/quote-versions/{version}/approval": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Approve
         * @description Needs an Idempotency-Key; the same key and body again are answered as the first time.
         */
        post: {
            parameters: {
                query?: never;
                header?: {
                    /** @description the same key and body again are answered as the first time; 8 to 200 characters */
                    "idempotency-key"?: string;
                };
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    version: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["ApproveInput"];
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Approval"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/quote-versions/{version}/send-back": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Send back with a question or a test to do
         * @description Needs an Idempotency-Key; the same key and body again are answered as the first time.
         */
        post: {
            parameters: {
                query?: never;
                header?: {
                    /** @description the same key and body again are answered as the first time; 8 to 200 characters */
                    "idempotency-key"?: string;
                };
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    version: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["SendBackInput"];
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Approval"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/quote-versions/{version}/refusal": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Refuse
         * @description Needs an Idempotency-Key; the same key and body again are answered as the first time.
         */
        post: {
            parameters: {
                query?: never;
                header?: {
                    /** @description the same key and body again are answered as the first time; 8 to 200 characters */
                    "idempotency-key"?: string;
                };
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    version: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["RefuseInput"];
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Approval"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/quote-versions/{version}/withdrawal": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Withdraw the approval, until the repair starts
         * @description Needs an Idempotency-Key; the same key and body again are answered as the first time.
         */
        post: {
            parameters: {
                query?: never;
                header?: {
                    /** @description the same key and body again are answered as the first time; 8 to 200 characters */
                    "idempotency-key"?: string;
                };
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    version: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["WaiverInput"];
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Approval"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/quote-versions/{version}/authorisations": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Record the customer’s permission, or that he declined
         * @description Needs an Idempotency-Key; the same key and body again are answered as the first time.
         */
        post: {
            parameters: {
                query?: never;
                header?: {
                    /** @description the same key and body again are answered as the first time; 8 to 200 characters */
                    "idempotency-key"?: string;
                };
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    version: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["NewAuthorisationInput"];
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Authorisation"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/garages/{garage}/decisions": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** Quotes that wait for a manager */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    garage: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            items: components["schemas"]["Decision"][];
                            next: string | null;
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/jobs/{job}/repairs": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** Repairs of a job */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            items: components["schemas"]["Repair"][];
                            next: string | null;
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/jobs/{job}/repair": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Start the repair
         * @description Needs a version that the manager approved and the customer permitted, within the garage’s tolerance.
         */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody?: {
                content: {
                    "application/json": Record<string, never> | null;
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Repair"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/jobs/{job}/repair/finish": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Finish the repair; its release retest is owed from now on */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["FinishRepairInput"];
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Repair"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/jobs/{job}/findings": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** What strip-down showed, against what had been believed */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            items: components["schemas"]["Finding"][];
                            next: string | null;
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        /** Record a finding */
        post: {
            parameters: {
                query?: never;
                header?: {
                    /** @description the same key and body again are answered as the first time; 8 to 200 characters */
                    "idempotency-key"?: string;
                };
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["NewFindingInput"];
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Finding"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/garages/{garage}/retests": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** Retests of a garage, the earliest due first */
        get: {
            parameters: {
                query?: {
                    after?: string;
                    limit?: number;
                    /** @description true: only what is still owed */
                    due?: "true" | "false";
                };
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    garage: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            items: components["schemas"]["Retest"][];
                            next: string | null;
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/jobs/{job}/retests": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** Retests that a job owes, promised, or was booked in for */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            items: components["schemas"]["Retest"][];
                            next: string | null;
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        /** Promise a follow-up retest */
        post: {
            parameters: {
                query?: never;
                header?: {
                    /** @description the same key and body again are answered as the first time; 8 to 200 characters */
                    "idempotency-key"?: string;
                };
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["NewRetestInput"];
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Retest"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/retests/{retest}/dates": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Book a retest, or give it another date */
        post: {
            parameters: {
                query?: never;
                header?: {
                    /** @description the same key and body again are answered as the first time; 8 to 200 characters */
                    "idempotency-key"?: string;
                };
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    retest: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["NewRetestDateInput"];
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Retest"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/retests/{retest}/comparison": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** Before and after */
        get: {
            parameters: {
                query?: {
                    /**
                     * @description the session to compare; otherwise the likeliest
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    session?: string;
                };
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    retest: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["RetestComparison"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/retests/{retest}/outcome": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Say how a retest went
         * @description A failed release retest ends approval, permission and repair: the job is testing again.
         */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    retest: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["RetestOutcomeInput"];
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Retest"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/retests/{retest}/waiver": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Waive a retest, with a reason */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    retest: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["WaiverInput"];
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Retest"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/garages/{garage}/reliability": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /**
         * How often the diagnosis was right
         * @description Counted over cylinders (or the engine) that findings name, against the evaluation that opened the engine. A declined suggestion turned out right where its test was not done, strip-down found a fault, and the release retest passed.
         */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    garage: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Reliability"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/jobs/{job}/test-record.pdf": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /**
         * The test record on paper: readings, conditions, and what they say
         * @description PDF, A4. Language: `language`, else Accept-Language, else that of the caller. Unit of pressure: the caller’s, else the garage’s.
         */
        get: {
            parameters: {
                query?: {
                    language?: "en" | "de" | "es";
                };
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description the document */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/pdf": string;
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/jobs/{job}/quote.pdf": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /**
         * The newest version of the quote on paper, for the customer
         * @description PDF, A4. Language: `language`, else Accept-Language, else that of the caller. Unit of pressure: the caller’s, else the garage’s.
         */
        get: {
            parameters: {
                query?: {
                    language?: "en" | "de" | "es";
                };
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description the document */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/pdf": string;
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/jobs/{job}/release.pdf": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /**
         * The release sheet: what was found and done, what the retest showed, what is promised
         * @description PDF, A4. Language: `language`, else Accept-Language, else that of the caller. Unit of pressure: the caller’s, else the garage’s.
         */
        get: {
            parameters: {
                query?: {
                    language?: "en" | "de" | "es";
                };
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description the document */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/pdf": string;
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/export": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** All records as JSON lines */
        get: {
            parameters: {
                query?: {
                    /**
                     * @description one garage; otherwise every one you may export
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    garage?: string;
                };
                header?: Record<string, string | undefined>;
                path?: never;
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description JSON lines, each {"kind", "record"}; the last one is {"kind":"end","lines":n} */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": string;
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/garages": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** Garages that the caller belongs to */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path?: never;
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            items: components["schemas"]["Garage"][];
                            next: string | null;
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        /** Set up a garage */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path?: never;
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["NewGarageInput"];
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Garage"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/garages/{garage}": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** One garage */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    garage: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Garage"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Edit a garage */
        patch: {
            parameters: {
                query?: never;
                header?: {
                    /**
                     * @description the ETag that the edit is based on; without it 428 where there is something to edit, and 412 when it is not the present one
                     * @example "3"
                     */
                    "if-match"?: string;
                };
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    garage: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["GarageEditInput"];
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Garage"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        trace?: never;
    };
    "/v1/garages/{garage}/staff": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** Who works in a garage */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    garage: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            items: components["schemas"]["StaffMember"][];
                            next: string | null;
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/garages/{garage}/bays": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** Bays of a garage */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    garage: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            items: components["schemas"]["Bay"][];
                            next: string | null;
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        /** Set up a bay */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    garage: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["NewBayInput"];
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Bay"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/bays/{bay}": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Edit or close a bay */
        patch: {
            parameters: {
                query?: never;
                header?: {
                    /**
                     * @description the ETag that the edit is based on; without it 428 where there is something to edit, and 412 when it is not the present one
                     * @example "3"
                     */
                    "if-match"?: string;
                };
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    bay: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["BayEditInput"];
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Bay"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        trace?: never;
    };
    "/v1/garages/{garage}/gauges": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** Gauges and testers of a garage */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    garage: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            items: components["schemas"]["Gauge"][];
                            next: string | null;
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        /** Add an instrument */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    garage: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["NewGaugeInput"];
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Gauge"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/gauges/{gauge}": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Edit or retire an instrument */
        patch: {
            parameters: {
                query?: never;
                header?: {
                    /**
                     * @description the ETag that the edit is based on; without it 428 where there is something to edit, and 412 when it is not the present one
                     * @example "3"
                     */
                    "if-match"?: string;
                };
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    gauge: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["GaugeEditInput"];
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Gauge"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        trace?: never;
    };
    "/v1/garages/{garage}/catalogue": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** Labour and parts of a garage */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    garage: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            items: components["schemas"]["CatalogueItem"][];
                            next: string | null;
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        /** Add labour or a part */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    garage: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["NewCatalogueItemInput"];
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["CatalogueItem"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/catalogue/{item}": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Edit or retire an item */
        patch: {
            parameters: {
                query?: never;
                header?: {
                    /**
                     * @description the ETag that the edit is based on; without it 428 where there is something to edit, and 412 when it is not the present one
                     * @example "3"
                     */
                    "if-match"?: string;
                };
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    item: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["CatalogueItemEditInput"];
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["CatalogueItem"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        trace?: never;
    };
    "/v1/people": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** People by name */
        get: {
            parameters: {
                query?: {
                    after?: string;
                    limit?: number;
                };
                header?: Record<string, string | undefined>;
                path?: never;
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            items: components["schemas"]["Person"][];
                            next: string | null;
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        /** Take somebody on */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path?: never;
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["NewPersonInput"];
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Person"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/people/{person}": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** One person */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    person: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Person"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Edit a person, or say that he left */
        patch: {
            parameters: {
                query?: never;
                header?: {
                    /**
                     * @description the ETag that the edit is based on; without it 428 where there is something to edit, and 412 when it is not the present one
                     * @example "3"
                     */
                    "if-match"?: string;
                };
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    person: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["PersonEditInput"];
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Person"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        trace?: never;
    };
    "/v1/garages/{garage}/deputies": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** Who stands in for whom */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    garage: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            items: components["schemas"]["Deputy"][];
                            next: string | null;
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        /** Name a deputy for a time */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    garage: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["NewDeputyInput"];
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Deputy"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/deputies/{deputy}/revocation": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** End a deputy early */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    deputy: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Deputy"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/audit": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** Changes of settings, newest first */
        get: {
            parameters: {
                query?: {
                    after?: string;
                    limit?: number;
                };
                header?: Record<string, string | undefined>;
                path?: never;
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            items: components["schemas"]["AuditEntry"][];
                            next: string | null;
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/garages/{garage}/customers": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** Customers of a garage by name */
        get: {
            parameters: {
                query?: {
                    after?: string;
                    limit?: number;
                    /** @description parts of the name, or digits of the phone number */
                    q?: string;
                };
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    garage: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            items: components["schemas"]["Customer"][];
                            next: string | null;
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        /** Add a customer */
        post: {
            parameters: {
                query?: never;
                header?: {
                    /** @description the same key and body again are answered as the first time; 8 to 200 characters */
                    "idempotency-key"?: string;
                };
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    garage: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["NewCustomerInput"];
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Customer"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/customers/{customer}": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** One customer */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    customer: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Customer"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Edit a customer */
        patch: {
            parameters: {
                query?: never;
                header?: {
                    /**
                     * @description the ETag that the edit is based on; without it 428 where there is something to edit, and 412 when it is not the present one
                     * @example "3"
                     */
                    "if-match"?: string;
                };
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    customer: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["CustomerEditInput"];
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Customer"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        trace?: never;
    };
    "/v1/customers/{customer}/erasure": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Erase what is known of a person; the records stay whole */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    customer: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Customer"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/garages/{garage}/vehicles": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** Vehicles of a garage by plate */
        get: {
            parameters: {
                query?: {
                    after?: string;
                    limit?: number;
                    /** @description the plate, however spaced, or words of the description */
                    q?: string;
                };
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    garage: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            items: components["schemas"]["Vehicle"][];
                            next: string | null;
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        /** Add a vehicle */
        post: {
            parameters: {
                query?: never;
                header?: {
                    /** @description the same key and body again are answered as the first time; 8 to 200 characters */
                    "idempotency-key"?: string;
                };
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    garage: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["NewVehicleInput"];
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Vehicle"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/vehicles/{vehicle}": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** One vehicle */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    vehicle: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Vehicle"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Edit a vehicle */
        patch: {
            parameters: {
                query?: never;
                header?: {
                    /**
                     * @description the ETag that the edit is based on; without it 428 where there is something to edit, and 412 when it is not the present one
                     * @example "3"
                     */
                    "if-match"?: string;
                };
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    vehicle: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["VehicleEditInput"];
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Vehicle"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        trace?: never;
    };
    "/v1/engines": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** Engines by description */
        get: {
            parameters: {
                query?: {
                    after?: string;
                    limit?: number;
                    /** @description words of the description, the stamped number, or the plate of the car */
                    q?: string;
                };
                header?: Record<string, string | undefined>;
                path?: never;
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            items: components["schemas"]["Engine"][];
                            next: string | null;
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        /** Add an engine */
        post: {
            parameters: {
                query?: never;
                header?: {
                    /** @description the same key and body again are answered as the first time; 8 to 200 characters */
                    "idempotency-key"?: string;
                };
                path?: never;
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["NewEngineInput"];
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Engine"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/engines/{engine}": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** One engine */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    engine: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Engine"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Edit an engine */
        patch: {
            parameters: {
                query?: never;
                header?: {
                    /**
                     * @description the ETag that the edit is based on; without it 428 where there is something to edit, and 412 when it is not the present one
                     * @example "3"
                     */
                    "if-match"?: string;
                };
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    engine: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["EngineEditInput"];
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Engine"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        trace?: never;
    };
    "/v1/engines/{engine}/history": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** An engine over the years */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    engine: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            items: components["schemas"]["EngineHistoryEntry"][];
                            next: string | null;
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/engine-families": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** Engine families by name */
        get: {
            parameters: {
                query?: {
                    after?: string;
                    limit?: number;
                    q?: string;
                };
                header?: Record<string, string | undefined>;
                path?: never;
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            items: components["schemas"]["EngineFamily"][];
                            next: string | null;
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        /** Add an engine family */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path?: never;
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["NewEngineFamilyInput"];
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["EngineFamily"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/engine-families/{family}": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** One engine family */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    family: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["EngineFamily"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Edit an engine family */
        patch: {
            parameters: {
                query?: never;
                header?: {
                    /**
                     * @description the ETag that the edit is based on; without it 428 where there is something to edit, and 412 when it is not the present one
                     * @example "3"
                     */
                    "if-match"?: string;
                };
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    family: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["EngineFamilyEditInput"];
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["EngineFamily"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        trace?: never;
    };
    "/v1/engines/{engine}/fittings": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Fit an engine into a vehicle */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    engine: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["NewFittingInput"];
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Fitting"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/fittings/{fitting}/removal": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Record that an engine was taken out */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    fitting: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["RemovalInput"];
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Fitting"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/engines/{engine}/events": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Record what happened to an engine */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    engine: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["NewEngineEventInput"];
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["EngineEvent"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/engines/{engine}/same": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Say that two records are one engine */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    engine: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["SameEngineInput"];
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            /**
                             * Format: uuid
                             * @description identifier, a UUID
                             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                             */
                            same: string;
                            reason: string;
                            /**
                             * Format: uuid
                             * @description identifier, a UUID
                             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                             */
                            engine: string;
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/garages/{garage}/jobs": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** Jobs of a garage, newest first */
        get: {
            parameters: {
                query?: {
                    after?: string;
                    limit?: number;
                    /** @description true: only jobs not handed over nor cancelled */
                    open?: "true" | "false";
                    /** @description plate, code, name or phone, typed loosely */
                    q?: string;
                };
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    garage: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            items: components["schemas"]["JobSummary"][];
                            next: string | null;
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        /**
         * Book a car in
         * @description Customer, vehicle and engine are named by their ids or made along the way. An Idempotency-Key makes a repeated request answer the first job.
         */
        post: {
            parameters: {
                query?: never;
                header?: {
                    /** @description the same key and body again are answered as the first time; 8 to 200 characters */
                    "idempotency-key"?: string;
                };
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    garage: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["NewJobInput"];
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Job"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/jobs/{job}": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** One job */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Job"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Edit what was told at book-in */
        patch: {
            parameters: {
                query?: never;
                header?: {
                    /**
                     * @description the ETag that the edit is based on; without it 428 where there is something to edit, and 412 when it is not the present one
                     * @example "3"
                     */
                    "if-match"?: string;
                };
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["JobEditInput"];
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Job"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        trace?: never;
    };
    "/v1/garages/{garage}/floor": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** The garage seen from above */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    garage: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Floor"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/garages/{garage}/search": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** Find a job by what is typed at the counter */
        get: {
            parameters: {
                query: {
                    /** @description code, plate, name or phone, typed loosely */
                    q: string;
                };
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    garage: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            items: components["schemas"]["SearchHit"][];
                            next: string | null;
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/jobs/{job}/bay": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Put a job into a bay, or out of it */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["BayPlacementInput"];
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Job"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/jobs/{job}/testing-closed": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** End testing with nothing found */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["TestingClosedInput"];
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Job"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/jobs/{job}/cancellation": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Cancel a job */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["CancellationInput"];
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Job"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/jobs/{job}/hand-over": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Hand a ready car over, with the follow-up retests promised */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["HandOverInput"];
                };
            };
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Job"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/jobs/{job}/contacts": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Note a talk with the customer */
        post: {
            parameters: {
                query?: never;
                header?: {
                    /** @description the same key and body again are answered as the first time; 8 to 200 characters */
                    "idempotency-key"?: string;
                };
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["NewContactInput"];
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["Contact"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/jobs/{job}/parts": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        /** Parts ordered for a job */
        get: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": {
                            items: components["schemas"]["PartsOrder"][];
                            next: string | null;
                        };
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        put?: never;
        /** Record that parts were ordered */
        post: {
            parameters: {
                query?: never;
                header?: {
                    /** @description the same key and body again are answered as the first time; 8 to 200 characters */
                    "idempotency-key"?: string;
                };
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    job: string;
                };
                cookie?: never;
            };
            requestBody: {
                content: {
                    "application/json": components["schemas"]["NewPartsOrderInput"];
                };
            };
            responses: {
                /** @description Default Response */
                201: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["PartsOrder"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/parts/{part}/arrival": {
        parameters: {
            query?: never;
            header?: Record<string, string | undefined>;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Record that parts have come */
        post: {
            parameters: {
                query?: never;
                header?: Record<string, string | undefined>;
                path: {
                    /**
                     * @description identifier, a UUID
                     * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                     */
                    part: string;
                };
                cookie?: never;
            };
            requestBody?: never;
            responses: {
                /** @description Default Response */
                200: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/json": components["schemas"]["PartsOrder"];
                    };
                };
                /** @description A problem */
                default: {
                    headers: {
                        [name: string]: unknown;
                    };
                    content: {
                        "application/problem+json": components["schemas"]["Problem"];
                    };
                };
            };
        };
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
}
export type webhooks = Record<string, never>;
export interface components {
    schemas: {
        /** @description A pressure as read, with its unit. Gauge pressure unless the field says absolute. */
        PressureInput: {
            value: number;
            /** @enum {string} */
            unit: "psi" | "kPa" | "bar" | "kgf/cm2";
        };
        /** @description A pressure above zero, with its unit. */
        PositivePressureInput: {
            value: number;
            /** @enum {string} */
            unit: "psi" | "kPa" | "bar" | "kgf/cm2";
        };
        /** @description Absolute air pressure at the station (not reduced to sea level). */
        AirPressureInput: {
            value: number;
            /** @enum {string} */
            unit: "psi" | "kPa" | "bar" | "kgf/cm2";
        };
        /** @description A vacuum reading as a positive depression below the surrounding air. */
        VacuumPressureInput: {
            value: number;
            /** @enum {string} */
            unit: "psi" | "kPa" | "bar" | "kgf/cm2" | "inHg" | "mbar";
        };
        /** @description How loud at each listening point: 0 none, 1 faint, 2 clear, 3 loud; absent = not listened. */
        HeardInput: {
            intake?: number;
            exhaust?: number;
            crankcase?: number;
            coolant?: number;
            neighbour?: number;
            outside?: number;
        };
        CompressionReadingInput: {
            /** @constant */
            test: "compression";
            cylinder: number;
            wet?: boolean;
            pressure: components["schemas"]["PressureInput"];
            firstStroke?: components["schemas"]["PressureInput"];
            strokes?: components["schemas"]["PressureInput"][];
            strokeCount?: number;
            running?: boolean;
            snap?: boolean;
            oilMl?: number;
            heldTenSeconds?: boolean;
            seq?: number;
        };
        LeakageReadingInput: {
            /** @constant */
            test: "leakage";
            cylinder: number;
            percent?: number;
            supply?: components["schemas"]["PositivePressureInput"];
            held?: components["schemas"]["PressureInput"];
            heard?: components["schemas"]["HeardInput"];
            neighbour?: number;
            rockersSlack?: number[];
            wet?: boolean;
            offTopDeg?: number;
        };
        PlugReadingInput: {
            /** @constant */
            test: "plug";
            cylinder: number;
            /** @enum {string} */
            appearance: "tan" | "dry-black" | "wet-oil" | "wet-fuel" | "white" | "damaged";
            afterRunAtSpeed?: boolean;
        };
        PowerBalanceReadingInput: {
            /** @constant */
            test: "power-balance";
            cylinder: number;
            rpmDrop: number;
        };
        VacuumReadingInput: {
            /** @constant */
            test: "vacuum";
            /** @enum {string} */
            pattern: "steady" | "low-steady" | "regular-drop" | "irregular-drop" | "slow-fall";
            reading?: components["schemas"]["VacuumPressureInput"];
        };
        CoolantGasReadingInput: {
            /** @constant */
            test: "coolant-gas";
            present: boolean;
        };
        BorescopeReadingInput: {
            /** @constant */
            test: "borescope";
            cylinder: number;
            seen: ("burnt-exhaust-valve" | "scored-bore" | "cracked-piston" | "carbon" | "coolant" | "nothing")[];
        };
        ClearanceReadingInput: {
            /** @constant */
            test: "clearance";
            cylinder: number;
            /** @enum {string} */
            valve: "intake" | "exhaust";
            /** @enum {string} */
            state: "right" | "tight" | "loose";
        };
        ValveLiftReadingInput: {
            /** @constant */
            test: "valve-lift";
            cylinder: number;
            /** @enum {string} */
            valve: "intake" | "exhaust";
            mm: number;
        };
        CoolingPressureReadingInput: {
            /** @constant */
            test: "cooling-pressure";
            lostPressure: components["schemas"]["PressureInput"];
            minutes: number;
        };
        ObservationInput: {
            /** @constant */
            test: "observation";
            cylinder?: number;
            present?: boolean;
            /** @enum {string} */
            code: "weak-by-hand" | "locked-by-hand" | "smoke-blue-throttle" | "smoke-blue-overrun" | "smoke-white" | "smoke-black" | "breather-smoke" | "water-in-oil" | "petrol-in-oil" | "oil-in-water" | "oil-use-high" | "spits-back" | "bubbles-at-plug-thread" | "bubbles-at-joint" | "better-with-other-plug-and-lead" | "piston-low-at-top";
        };
        CrankingCurrentReadingInput: {
            /** @constant */
            test: "cranking-current";
            samples: {
                seconds: number[];
                amps: number[];
            };
            cylinderOneAt?: number;
        };
        EnteredReadingInput: components["schemas"]["CompressionReadingInput"] | components["schemas"]["LeakageReadingInput"] | components["schemas"]["PlugReadingInput"] | components["schemas"]["PowerBalanceReadingInput"] | components["schemas"]["VacuumReadingInput"] | components["schemas"]["CoolantGasReadingInput"] | components["schemas"]["BorescopeReadingInput"] | components["schemas"]["ClearanceReadingInput"] | components["schemas"]["ValveLiftReadingInput"] | components["schemas"]["CoolingPressureReadingInput"] | components["schemas"]["ObservationInput"] | components["schemas"]["CrankingCurrentReadingInput"];
        ReadingInput: {
            /** @constant */
            test: "compression";
            cylinder: number;
            wet?: boolean;
            pressure: components["schemas"]["PressureInput"];
            firstStroke?: components["schemas"]["PressureInput"];
            strokes?: components["schemas"]["PressureInput"][];
            strokeCount?: number;
            running?: boolean;
            snap?: boolean;
            oilMl?: number;
            heldTenSeconds?: boolean;
            seq?: number;
            session?: string;
        } | {
            /** @constant */
            test: "leakage";
            cylinder: number;
            percent?: number;
            supply?: components["schemas"]["PositivePressureInput"];
            held?: components["schemas"]["PressureInput"];
            heard?: components["schemas"]["HeardInput"];
            neighbour?: number;
            rockersSlack?: number[];
            wet?: boolean;
            offTopDeg?: number;
            session?: string;
        } | {
            /** @constant */
            test: "plug";
            cylinder: number;
            /** @enum {string} */
            appearance: "tan" | "dry-black" | "wet-oil" | "wet-fuel" | "white" | "damaged";
            afterRunAtSpeed?: boolean;
            session?: string;
        } | {
            /** @constant */
            test: "power-balance";
            cylinder: number;
            rpmDrop: number;
            session?: string;
        } | {
            /** @constant */
            test: "vacuum";
            /** @enum {string} */
            pattern: "steady" | "low-steady" | "regular-drop" | "irregular-drop" | "slow-fall";
            reading?: components["schemas"]["VacuumPressureInput"];
            session?: string;
        } | {
            /** @constant */
            test: "coolant-gas";
            present: boolean;
            session?: string;
        } | {
            /** @constant */
            test: "borescope";
            cylinder: number;
            seen: ("burnt-exhaust-valve" | "scored-bore" | "cracked-piston" | "carbon" | "coolant" | "nothing")[];
            session?: string;
        } | {
            /** @constant */
            test: "clearance";
            cylinder: number;
            /** @enum {string} */
            valve: "intake" | "exhaust";
            /** @enum {string} */
            state: "right" | "tight" | "loose";
            session?: string;
        } | {
            /** @constant */
            test: "valve-lift";
            cylinder: number;
            /** @enum {string} */
            valve: "intake" | "exhaust";
            mm: number;
            session?: string;
        } | {
            /** @constant */
            test: "cooling-pressure";
            lostPressure: components["schemas"]["PressureInput"];
            minutes: number;
            session?: string;
        } | {
            /** @constant */
            test: "observation";
            cylinder?: number;
            present?: boolean;
            /** @enum {string} */
            code: "weak-by-hand" | "locked-by-hand" | "smoke-blue-throttle" | "smoke-blue-overrun" | "smoke-white" | "smoke-black" | "breather-smoke" | "water-in-oil" | "petrol-in-oil" | "oil-in-water" | "oil-use-high" | "spits-back" | "bubbles-at-plug-thread" | "bubbles-at-joint" | "better-with-other-plug-and-lead" | "piston-low-at-top";
            session?: string;
        } | {
            /** @constant */
            test: "cranking-current";
            samples: {
                seconds: number[];
                amps: number[];
            };
            cylinderOneAt?: number;
            session?: string;
        };
        EngineLimitsInput: {
            minimum?: components["schemas"]["PressureInput"];
            maximum?: components["schemas"]["PressureInput"];
            spreadPercent?: number;
            spreadPressure?: components["schemas"]["PressureInput"];
        };
        EngineHistoryInput: {
            kmSinceRings?: number;
            monthsStored?: number;
            minutesRunBeforeTest?: number;
            overheated?: boolean;
            headSkimmed?: boolean;
        };
        EngineDescriptionInput: {
            /** @enum {string} */
            fuel: "petrol" | "diesel";
            cycle?: 4 | 2;
            /** @enum {string} */
            injection?: "none" | "port" | "direct" | "mechanical-diesel" | "common-rail";
            /** @enum {string} */
            layout: "inline" | "v" | "flat";
            cylinders: number;
            firingOrder?: number[];
            banks?: number[][];
            gaskets?: number[][];
            boreMm?: number;
            strokeMm?: number;
            rodLengthMm?: number;
            compressionRatio?: number;
            intakeClosesDegAbdc?: number;
            decompressor?: boolean;
            /** @enum {string} */
            valveGear?: "overhead" | "side";
            /** @enum {string} */
            cooling?: "water" | "air";
            /** @enum {string} */
            camshaft?: "standard" | "other";
            limits?: components["schemas"]["EngineLimitsInput"];
            hotExhaustCylinders?: number[];
            history?: components["schemas"]["EngineHistoryInput"];
        };
        ConditionsInput: {
            /** @enum {string} */
            engine: "hot" | "warm" | "cold";
            /** @enum {string} */
            throttle: "open" | "closed";
            /** @enum {string} */
            plugsOut: "all" | "one";
            strokes?: number;
            crankingRpm?: number;
            batteryVolts?: number;
            altitudeM?: number;
            airPressure?: components["schemas"]["AirPressureInput"];
            airTempC?: number;
            clearancesSet?: boolean;
            headTorqued?: boolean;
        };
        CaseGaugeInput: {
            span: components["schemas"]["PositivePressureInput"];
            accuracyClass: number;
            resolution?: components["schemas"]["PressureInput"];
            volumeBeforeValveMl?: number;
            /** @enum {string} */
            connection?: "screwed" | "held";
        };
        LeakageTesterInput: {
            supply: components["schemas"]["PositivePressureInput"];
            restrictorMm: number;
        };
        CaseSessionInput: {
            conditions: components["schemas"]["ConditionsInput"];
            gauge?: components["schemas"]["CaseGaugeInput"];
            leakageTester?: components["schemas"]["LeakageTesterInput"];
        };
        /**
         * @example {
         *       "engine": {
         *         "fuel": "petrol",
         *         "layout": "inline",
         *         "cylinders": 4,
         *         "firingOrder": [
         *           1,
         *           3,
         *           4,
         *           2
         *         ],
         *         "boreMm": 84,
         *         "strokeMm": 89,
         *         "compressionRatio": 8.8
         *       },
         *       "conditions": {
         *         "engine": "hot",
         *         "throttle": "open",
         *         "plugsOut": "all",
         *         "strokes": 8,
         *         "batteryVolts": 12.4,
         *         "altitudeM": 12,
         *         "airTempC": 18,
         *         "clearancesSet": true,
         *         "headTorqued": true
         *       },
         *       "gauge": {
         *         "span": {
         *           "value": 300,
         *           "unit": "psi"
         *         },
         *         "accuracyClass": 1.6,
         *         "resolution": {
         *           "value": 1,
         *           "unit": "psi"
         *         }
         *       },
         *       "leakageTester": {
         *         "supply": {
         *           "value": 80,
         *           "unit": "psi"
         *         },
         *         "restrictorMm": 1.016
         *       },
         *       "readings": [
         *         {
         *           "test": "compression",
         *           "cylinder": 1,
         *           "pressure": {
         *             "value": 155,
         *             "unit": "psi"
         *           }
         *         },
         *         {
         *           "test": "compression",
         *           "cylinder": 2,
         *           "pressure": {
         *             "value": 160,
         *             "unit": "psi"
         *           }
         *         },
         *         {
         *           "test": "compression",
         *           "cylinder": 3,
         *           "pressure": {
         *             "value": 140,
         *             "unit": "psi"
         *           }
         *         },
         *         {
         *           "test": "compression",
         *           "cylinder": 4,
         *           "pressure": {
         *             "value": 145,
         *             "unit": "psi"
         *           }
         *         },
         *         {
         *           "test": "leakage",
         *           "cylinder": 3,
         *           "held": {
         *             "value": 46,
         *             "unit": "psi"
         *           },
         *           "heard": {
         *             "exhaust": 3,
         *             "intake": 0
         *           }
         *         }
         *       ]
         *     }
         */
        CaseInput: {
            engine: components["schemas"]["EngineDescriptionInput"];
            conditions: components["schemas"]["ConditionsInput"];
            gauge?: components["schemas"]["CaseGaugeInput"];
            leakageTester?: components["schemas"]["LeakageTesterInput"];
            sessions?: {
                [key: string]: components["schemas"]["CaseSessionInput"];
            };
            readings: components["schemas"]["ReadingInput"][];
        };
        /** @enum {string} */
        PressureUnitInput: "psi" | "kPa" | "bar" | "kgf/cm2";
        /** @enum {string} */
        OperationInput: "look-borescope" | "look-head-off" | "clearances-run-test" | "head-valves" | "guides" | "rings" | "rebore" | "soak-run-test" | "piston" | "rocker-pushrod" | "cam-tappets" | "hard-run" | "decoke" | "fuel-wash" | "gasket-retorque" | "gasket-replace" | "head-crack" | "block" | "timing" | "starter-battery" | "sticking-valve" | "plug-thread" | "rod" | "run-on" | "overhaul";
        /** @enum {string} */
        FaultInput: "exhaust-valve-leak" | "intake-valve-leak" | "ring-wear" | "ring-broken-or-stuck" | "piston-damage" | "valve-not-opening" | "clearance-tight" | "carbon-build-up" | "fuel-wash" | "gasket-to-coolant" | "gasket-to-outside" | "cracked-head" | "valve-sticking" | "rod-bent" | "plug-thread-leak";
        /** @enum {string} */
        CauseInput: "throttle-closed" | "slow-cranking" | "valve-timing" | "worn-evenly" | "gauge-error" | "none";
        ExtremeCylinderInput: {
            cylinder: number;
            pressure: components["schemas"]["PressureInput"];
            readings: number[];
        };
        AlsoCheckedInput: {
            /** @enum {string} */
            rule: "own-spread-percent" | "own-spread-pressure" | "one-tenth" | "three-quarters" | "fifth-below-mean" | "ten-psi" | "own-minimum" | "own-maximum";
            basis: string;
            /** @enum {string} */
            verdict: "inside" | "outside" | "undecided";
            /** @enum {string} */
            asRead: "inside" | "outside";
            probabilityInside: number;
            cylinders?: number[];
        };
        ConsistencyInput: {
            /** @description The session judged; null is the top level of the case. */
            session: string | null;
            /** @enum {string} */
            rule: "own-spread-percent" | "own-spread-pressure" | "one-tenth" | "three-quarters" | "fifth-below-mean" | "ten-psi" | "own-minimum" | "own-maximum";
            basis: string;
            limitPercent?: number;
            limitPressure?: components["schemas"]["PressureInput"];
            spreadPercent: number | null;
            lowest: components["schemas"]["ExtremeCylinderInput"] | null;
            highest: components["schemas"]["ExtremeCylinderInput"] | null;
            asRead: ("inside" | "outside") | null;
            /** @enum {string} */
            verdict: "inside" | "outside" | "undecided";
            probabilityInside: number | null;
            alsoChecked: components["schemas"]["AlsoCheckedInput"][];
        };
        ExpectedPressureInput: {
            low: components["schemas"]["PressureInput"];
            high: components["schemas"]["PressureInput"];
            basis: string;
        };
        CylinderBeliefInput: {
            cylinder: number;
            sound: number;
            faults: {
                fault: components["schemas"]["FaultInput"];
                probability: number;
            }[];
            pairs?: {
                faults: [
                    components["schemas"]["FaultInput"],
                    components["schemas"]["FaultInput"]
                ];
                probability: number;
            }[];
            ignitionOrMixture?: number;
        };
        NeighbourBeliefInput: {
            cylinders: [
                number,
                number
            ];
            /** @constant */
            fault: "gasket-between";
            probability: number;
        };
        LeakageResultInput: {
            reading: number;
            cylinder: number;
            percentAsRead: number | null;
            overLimit: boolean | null;
            leakAreaMm2: number | null;
            percentAtReference: number | null;
            /** @description Leak area over the median area of the other cylinders. */
            againstSisters: number | null;
            /** @description Low end of the 95 percent range of the leak area. */
            leakAreaLowMm2?: number;
            leakAreaHighMm2?: number;
            percentAtReferenceLow?: number;
            percentAtReferenceHigh?: number;
        };
        BecauseInput: {
            /** @enum {string} */
            kind: "reading" | "prior" | "together";
            readings: number[];
            cylinder?: number;
            cylinders?: [
                number,
                number
            ];
            /** @enum {string} */
            fault?: "exhaust-valve-leak" | "intake-valve-leak" | "ring-wear" | "ring-broken-or-stuck" | "piston-damage" | "valve-not-opening" | "clearance-tight" | "carbon-build-up" | "fuel-wash" | "gasket-to-coolant" | "gasket-to-outside" | "cracked-head" | "valve-sticking" | "rod-bent" | "plug-thread-leak" | "gasket-between" | "sound";
            cause?: components["schemas"]["CauseInput"];
            decibans: number;
            says: string;
        };
        TurnsInput: {
            reading: number;
            cylinder?: number;
            to: components["schemas"]["PressureInput"];
            leads: string;
            says: string;
        };
        SuggestedTestInput: {
            /** @enum {string} */
            test: "compression" | "leakage" | "plug" | "power-balance" | "vacuum" | "coolant-gas" | "borescope" | "clearance" | "valve-lift" | "cooling-pressure" | "observation" | "cranking-current";
            /** @enum {string} */
            code?: "weak-by-hand" | "locked-by-hand" | "smoke-blue-throttle" | "smoke-blue-overrun" | "smoke-white" | "smoke-black" | "breather-smoke" | "water-in-oil" | "petrol-in-oil" | "oil-in-water" | "oil-use-high" | "spits-back" | "bubbles-at-plug-thread" | "bubbles-at-joint" | "better-with-other-plug-and-lead" | "piston-low-at-top";
            wet?: boolean;
            repeat?: boolean;
            running?: boolean;
            snap?: boolean;
            rockersSlack?: number[];
            /** @enum {string} */
            first?: "warm-up" | "run-engine" | "swap-gauge" | "set-clearances" | "swap-plug-and-lead";
            cylinders?: number[];
        };
        SuggestionInput: {
            tests: components["schemas"]["SuggestedTestInput"][];
            bits: number;
            minutes: number;
            bitsPerMinute: number;
            says: string;
        };
        RepairOptionInput: {
            operation: components["schemas"]["OperationInput"];
            cylinders?: number[];
            cures: number;
            expectedMinutes: number;
            says?: string;
        };
        ObjectionInput: {
            /** @enum {string} */
            code: "mixed-strokes" | "mixed-conditions" | "oil-in-diesel" | "no-sister" | "incomplete" | "over-span" | "no-tester" | "not-weighed" | "two-stroke" | "throttle-shut" | "too-few-strokes" | "speed-sag" | "gauge-not-released" | "adaptor-leaking" | "wrong-cylinder" | "wrong-unit" | "rounded" | "piston-off-top" | "check-valve-left-in" | "regulator-droop" | "control-rises" | "wet-below-dry" | "wet-too-high" | "sea-level-pressure" | "leakage-against-compression" | "repeat-disagrees";
            readings: number[];
            says: string;
            do: string;
        };
        CautionInput: {
            /** @enum {string} */
            code: "oil-in-diesel" | "cranking" | "petrol-mist" | "liquid-in-cylinder" | "wet-test-oil" | "diesel-spray" | "diesel-gauge" | "compressed-air" | "running-engine" | "high-tension" | "current-clamp" | "coolant-cap" | "borescope" | "strip-down";
            says: string;
        };
        EvaluationInput: {
            model: string;
            consistency: components["schemas"]["ConsistencyInput"];
            expected?: components["schemas"]["ExpectedPressureInput"];
            cylinders: components["schemas"]["CylinderBeliefInput"][];
            neighbours: components["schemas"]["NeighbourBeliefInput"][];
            engine: {
                cause: components["schemas"]["CauseInput"];
                probability: number;
            }[];
            leakage: components["schemas"]["LeakageResultInput"][];
            because: components["schemas"]["BecauseInput"][];
            turns?: components["schemas"]["TurnsInput"];
            next: components["schemas"]["SuggestionInput"][];
            enough: {
                says: string;
            } | null;
            repairs: components["schemas"]["RepairOptionInput"][];
            objections: components["schemas"]["ObjectionInput"][];
            cautions: components["schemas"]["CautionInput"][];
        };
        FieldErrorInput: {
            /** @description JSON Pointer (RFC 6901) into what was sent; "" is the whole. */
            path: string;
            expected: string;
            got?: string;
        };
        DiagnosisProblemInput: {
            type: string;
            title: string;
            errors: components["schemas"]["FieldErrorInput"][];
        };
        /**
         * @example {
         *       "before": {
         *         "engine": {
         *           "fuel": "petrol",
         *           "layout": "inline",
         *           "cylinders": 4,
         *           "firingOrder": [
         *             1,
         *             3,
         *             4,
         *             2
         *           ],
         *           "boreMm": 84,
         *           "strokeMm": 89,
         *           "compressionRatio": 8.8
         *         },
         *         "conditions": {
         *           "engine": "hot",
         *           "throttle": "open",
         *           "plugsOut": "all",
         *           "strokes": 8,
         *           "batteryVolts": 12.4,
         *           "altitudeM": 12,
         *           "airTempC": 18,
         *           "clearancesSet": true,
         *           "headTorqued": true
         *         },
         *         "gauge": {
         *           "span": {
         *             "value": 300,
         *             "unit": "psi"
         *           },
         *           "accuracyClass": 1.6,
         *           "resolution": {
         *             "value": 1,
         *             "unit": "psi"
         *           }
         *         },
         *         "leakageTester": {
         *           "supply": {
         *             "value": 80,
         *             "unit": "psi"
         *           },
         *           "restrictorMm": 1.016
         *         },
         *         "readings": [
         *           {
         *             "test": "compression",
         *             "cylinder": 1,
         *             "pressure": {
         *               "value": 155,
         *               "unit": "psi"
         *             }
         *           },
         *           {
         *             "test": "compression",
         *             "cylinder": 2,
         *             "pressure": {
         *               "value": 160,
         *               "unit": "psi"
         *             }
         *           },
         *           {
         *             "test": "compression",
         *             "cylinder": 3,
         *             "pressure": {
         *               "value": 140,
         *               "unit": "psi"
         *             }
         *           },
         *           {
         *             "test": "compression",
         *             "cylinder": 4,
         *             "pressure": {
         *               "value": 145,
         *               "unit": "psi"
         *             }
         *           },
         *           {
         *             "test": "leakage",
         *             "cylinder": 3,
         *             "held": {
         *               "value": 46,
         *               "unit": "psi"
         *             },
         *             "heard": {
         *               "exhaust": 3,
         *               "intake": 0
         *             }
         *           }
         *         ]
         *       },
         *       "after": {
         *         "engine": {
         *           "fuel": "petrol",
         *           "layout": "inline",
         *           "cylinders": 4,
         *           "firingOrder": [
         *             1,
         *             3,
         *             4,
         *             2
         *           ],
         *           "boreMm": 84,
         *           "strokeMm": 89,
         *           "compressionRatio": 8.8
         *         },
         *         "conditions": {
         *           "engine": "hot",
         *           "throttle": "open",
         *           "plugsOut": "all",
         *           "strokes": 8,
         *           "batteryVolts": 12.4,
         *           "altitudeM": 12,
         *           "airTempC": 18,
         *           "clearancesSet": true,
         *           "headTorqued": true
         *         },
         *         "gauge": {
         *           "span": {
         *             "value": 300,
         *             "unit": "psi"
         *           },
         *           "accuracyClass": 1.6,
         *           "resolution": {
         *             "value": 1,
         *             "unit": "psi"
         *           }
         *         },
         *         "leakageTester": {
         *           "supply": {
         *             "value": 80,
         *             "unit": "psi"
         *           },
         *           "restrictorMm": 1.016
         *         },
         *         "readings": [
         *           {
         *             "test": "compression",
         *             "cylinder": 1,
         *             "pressure": {
         *               "value": 158,
         *               "unit": "psi"
         *             }
         *           },
         *           {
         *             "test": "compression",
         *             "cylinder": 2,
         *             "pressure": {
         *               "value": 160,
         *               "unit": "psi"
         *             }
         *           },
         *           {
         *             "test": "compression",
         *             "cylinder": 3,
         *             "pressure": {
         *               "value": 157,
         *               "unit": "psi"
         *             }
         *           },
         *           {
         *             "test": "compression",
         *             "cylinder": 4,
         *             "pressure": {
         *               "value": 156,
         *               "unit": "psi"
         *             }
         *           }
         *         ]
         *       },
         *       "work": [
         *         "head-valves"
         *       ]
         *     }
         */
        ComparisonRequestInput: {
            before: components["schemas"]["CaseInput"];
            after: components["schemas"]["CaseInput"];
            work?: components["schemas"]["OperationInput"][];
        };
        CylinderChangeInput: {
            cylinder: number;
            before: components["schemas"]["PressureInput"] | null;
            after: components["schemas"]["PressureInput"] | null;
            change: number | null;
            improved: number | null;
            unchanged: number | null;
            worse: number | null;
        };
        SpreadChangeInput: {
            before: number | null;
            after: number | null;
            change: number | null;
            improved: number | null;
            unchanged: number | null;
            worse: number | null;
        };
        CuredInput: {
            cylinder: number;
            fault: components["schemas"]["FaultInput"];
            before: number;
            after: number;
            cured: number;
        };
        NewHarmInput: {
            cylinder: number;
            probability: number;
            says: string;
        };
        ComparisonObjectionInput: {
            /** @enum {string} */
            code: "mixed-strokes" | "mixed-conditions" | "oil-in-diesel" | "no-sister" | "incomplete" | "over-span" | "no-tester" | "not-weighed" | "two-stroke" | "throttle-shut" | "too-few-strokes" | "speed-sag" | "gauge-not-released" | "adaptor-leaking" | "wrong-cylinder" | "wrong-unit" | "rounded" | "piston-off-top" | "check-valve-left-in" | "regulator-droop" | "control-rises" | "wet-below-dry" | "wet-too-high" | "sea-level-pressure" | "leakage-against-compression" | "repeat-disagrees";
            /** @enum {string} */
            in: "before" | "after" | "both";
            readings: number[];
            says: string;
            do: string;
        };
        ComparisonInput: {
            model: string;
            comparable: boolean;
            cylinders: components["schemas"]["CylinderChangeInput"][];
            spread: components["schemas"]["SpreadChangeInput"];
            cured: components["schemas"]["CuredInput"][];
            newHarm: components["schemas"]["NewHarmInput"][];
            objections: components["schemas"]["ComparisonObjectionInput"][];
        };
        PersonRefInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            name: string;
        };
        /** @enum {string} */
        RoleInput: "technician" | "front-desk" | "manager" | "owner";
        /** @enum {string} */
        ScopeInput: "jobs:read" | "jobs:write" | "engines:read" | "readings:write" | "retests:write" | "evaluate" | "events:read";
        RoleHeldInput: {
            garage: string | null;
            role: components["schemas"]["RoleInput"];
            approvalLimitMinor?: number | null;
        };
        /**
         * @example {
         *       "email": "ada@example.test",
         *       "password": "five old spanners"
         *     }
         */
        SignInInput: {
            /** Format: email */
            email: string;
            password: string;
            oneTimeCode?: string;
        };
        TokensInput: {
            accessToken: string;
            /** @constant */
            tokenType: "Bearer";
            expiresInSeconds: number;
            refreshToken?: string;
        };
        /**
         * @example {
         *       "refreshToken": "ebref-example"
         *     }
         */
        RefreshInput: {
            refreshToken?: string;
        };
        /**
         * @example {
         *       "enrolmentCode": "QUAY-7T4K"
         *     }
         */
        EnrolInput: {
            enrolmentCode: string;
        };
        EnrolledInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            tablet: string;
            name: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            garage: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            bay: string;
            tabletToken: string;
        };
        /**
         * @example {
         *       "person": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b",
         *       "pin": "4821"
         *     }
         */
        TakeOverInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            person: string;
            /** @description four to eight digits */
            pin: string;
        };
        /**
         * @example {
         *       "grant_type": "client_credentials",
         *       "scope": "jobs:read evaluate",
         *       "client_id": "app-example",
         *       "client_secret": "ebapp-example"
         *     }
         */
        TokenRequestInput: {
            /** @constant */
            grant_type: "client_credentials";
            scope?: string;
            client_id?: string;
            client_secret?: string;
        };
        TokenAnswerInput: {
            access_token: string;
            /** @constant */
            token_type: "Bearer";
            expires_in: number;
            scope: string;
        };
        /**
         * @example {
         *       "link": "eblink-example",
         *       "name": "Olga Ownfield",
         *       "email": "olga@example.test",
         *       "password": "five old spanners"
         *     }
         */
        OwnerSetupInput: {
            link: string;
            name: string;
            /** Format: email */
            email: string;
            /** @description at least 12 characters */
            password: string;
        };
        MeInput: {
            /** @enum {string} */
            kind: "person" | "tablet" | "app";
            person: components["schemas"]["PersonRefInput"] | null;
            roles: components["schemas"]["RoleHeldInput"][];
            garages: {
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                id: string;
                name: string;
                timeZone: string;
                currency: string;
                pressureUnit: components["schemas"]["PressureUnitInput"];
                /** @enum {string} */
                locale: "en" | "de" | "es";
            }[];
            tablet: {
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                id: string;
                name: string;
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                garage: string;
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                bay: string;
            } | null;
            scopes: components["schemas"]["ScopeInput"][];
            /** @enum {string} */
            locale: "en" | "de" | "es";
            pressureUnit: components["schemas"]["PressureUnitInput"] | null;
            deputyFor: {
                manager: components["schemas"]["PersonRefInput"];
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                garage: string;
                /**
                 * Format: date-time
                 * @description instant, RFC 3339
                 * @example 2026-05-06T10:20:00.000Z
                 */
                until: string;
                approvalLimitMinor: number | null;
            }[];
        };
        TabletInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            garage: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            bay: string;
            name: string;
            enrolledAt: string | null;
            revokedAt: string | null;
        };
        /**
         * @example {
         *       "bay": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b",
         *       "name": "Tablet on the lift"
         *     }
         */
        NewTabletInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            bay: string;
            name: string;
        };
        TabletMadeInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            garage: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            bay: string;
            name: string;
            enrolledAt: string | null;
            revokedAt: string | null;
            enrolmentCode: string;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            expiresAt: string;
        };
        OutsideAppInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            name: string;
            clientId: string;
            scopes: components["schemas"]["ScopeInput"][];
            garages: string[];
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            createdAt: string;
            revokedAt: string | null;
        };
        /**
         * @example {
         *       "name": "Ledger",
         *       "scopes": [
         *         "jobs:read"
         *       ],
         *       "garages": [
         *         "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b"
         *       ]
         *     }
         */
        NewOutsideAppInput: {
            name: string;
            scopes: components["schemas"]["ScopeInput"][];
            /** @default [] */
            garages?: string[];
        };
        OutsideAppMadeInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            name: string;
            clientId: string;
            scopes: components["schemas"]["ScopeInput"][];
            garages: string[];
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            createdAt: string;
            revokedAt: string | null;
            clientSecret: string;
        };
        PersonInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            name: string;
            email: string | null;
            hasPin: boolean;
            roles: components["schemas"]["RoleHeldInput"][];
            locale: ("en" | "de" | "es") | null;
            pressureUnit: components["schemas"]["PressureUnitInput"] | null;
            leftAt: string | null;
            version: number;
        };
        /**
         * @example {
         *       "name": "Ned Torkham",
         *       "email": "ned@example.test",
         *       "password": "five old spanners",
         *       "pin": "4821",
         *       "roles": [
         *         {
         *           "garage": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b",
         *           "role": "manager",
         *           "approvalLimitMinor": 150000
         *         }
         *       ],
         *       "locale": "en",
         *       "pressureUnit": "psi"
         *     }
         */
        NewPersonInput: {
            name: string;
            /** Format: email */
            email?: string;
            /** @description at least 12 characters */
            password?: string;
            /** @description four to eight digits */
            pin?: string;
            roles: components["schemas"]["RoleHeldInput"][];
            /** @enum {string} */
            locale?: "en" | "de" | "es";
            pressureUnit?: components["schemas"]["PressureUnitInput"];
        };
        /**
         * @example {
         *       "name": "Ned Torkham",
         *       "email": "ned@example.test",
         *       "password": "five old spanners",
         *       "pin": "4821",
         *       "roles": [
         *         {
         *           "garage": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b",
         *           "role": "technician"
         *         }
         *       ],
         *       "locale": "en",
         *       "pressureUnit": "psi",
         *       "left": false
         *     }
         */
        PersonEditInput: {
            name?: string;
            email?: string | null;
            /** @description at least 12 characters */
            password?: string;
            /** @description four to eight digits */
            pin?: string;
            roles?: components["schemas"]["RoleHeldInput"][];
            locale?: ("en" | "de" | "es") | null;
            pressureUnit?: components["schemas"]["PressureUnitInput"] | null;
            left?: boolean;
        };
        /**
         * @example {
         *       "locale": "de",
         *       "pressureUnit": "bar"
         *     }
         */
        MyPreferencesInput: {
            locale?: ("en" | "de" | "es") | null;
            pressureUnit?: components["schemas"]["PressureUnitInput"] | null;
        };
        DeputyInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            garage: string;
            manager: components["schemas"]["PersonRefInput"];
            deputy: components["schemas"]["PersonRefInput"];
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            from: string;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            until: string;
            revokedAt: string | null;
        };
        /**
         * @example {
         *       "manager": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b",
         *       "deputy": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4c",
         *       "from": "2026-05-06T10:20:00.000Z",
         *       "until": "2026-05-20T10:20:00.000Z"
         *     }
         */
        NewDeputyInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            manager?: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            deputy: string;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            from?: string;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            until: string;
        };
        AuditEntryInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            at: string;
            garage: string | null;
            actor: {
                kind: string;
                id: string;
                name: string | null;
            };
            action: string;
            subject: unknown;
        };
        GarageInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            name: string;
            /** @description first part of the job codes: "K" gives K 27 */
            codeLetter: string;
            timeZone: string;
            /**
             * @description ISO 4217 currency code
             * @example EUR
             */
            currency: string;
            pressureUnit: components["schemas"]["PressureUnitInput"];
            elevationM: number | null;
            /** @enum {string} */
            locale: "en" | "de" | "es";
            /** @description money in minor units of the currency named beside it */
            labourRateMinor: number;
            taxBasisPoints: number;
            pricesIncludeTax: boolean;
            toleranceBasisPoints: number;
            version: number;
        };
        /**
         * @example {
         *       "name": "Quay Street Engines",
         *       "codeLetter": "Q",
         *       "timeZone": "Europe/Lisbon",
         *       "currency": "EUR",
         *       "pressureUnit": "psi",
         *       "elevationM": 12,
         *       "locale": "en",
         *       "labourRateMinor": 7800,
         *       "taxBasisPoints": 2300,
         *       "pricesIncludeTax": false,
         *       "toleranceBasisPoints": 0
         *     }
         */
        NewGarageInput: {
            name: string;
            /** @description first part of the job codes: "K" gives K 27 */
            codeLetter: string;
            timeZone: string;
            /**
             * @description ISO 4217 currency code
             * @example EUR
             */
            currency: string;
            pressureUnit: components["schemas"]["PressureUnitInput"];
            /** @default null */
            elevationM?: number | null;
            /**
             * @default en
             * @enum {string}
             */
            locale?: "en" | "de" | "es";
            /** @description money in minor units of the currency named beside it */
            labourRateMinor: number;
            taxBasisPoints: number;
            /** @default false */
            pricesIncludeTax?: boolean;
            /** @default 0 */
            toleranceBasisPoints?: number;
        };
        /**
         * @example {
         *       "name": "Quay Street Engines",
         *       "codeLetter": "Q",
         *       "timeZone": "Europe/Lisbon",
         *       "currency": "EUR",
         *       "pressureUnit": "psi",
         *       "elevationM": 12,
         *       "locale": "en",
         *       "labourRateMinor": 7800,
         *       "taxBasisPoints": 2300,
         *       "pricesIncludeTax": false,
         *       "toleranceBasisPoints": 0
         *     }
         */
        GarageEditInput: {
            name?: string;
            /** @description first part of the job codes: "K" gives K 27 */
            codeLetter?: string;
            timeZone?: string;
            /**
             * @description ISO 4217 currency code
             * @example EUR
             */
            currency?: string;
            pressureUnit?: components["schemas"]["PressureUnitInput"];
            elevationM?: number | null;
            /** @enum {string} */
            locale?: "en" | "de" | "es";
            /** @description money in minor units of the currency named beside it */
            labourRateMinor?: number;
            taxBasisPoints?: number;
            pricesIncludeTax?: boolean;
            toleranceBasisPoints?: number;
        };
        BayInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            garage: string;
            name: string;
            position: number;
            closedAt: string | null;
            version: number;
        };
        /**
         * @example {
         *       "name": "Bay 3",
         *       "position": 3
         *     }
         */
        NewBayInput: {
            name: string;
            position: number;
        };
        /**
         * @example {
         *       "name": "Bay 3",
         *       "position": 3,
         *       "closed": false
         *     }
         */
        BayEditInput: {
            name?: string;
            position?: number;
            closed?: boolean;
        };
        GaugeInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            garage: string;
            name: string;
            /** @enum {string} */
            kind: "compression" | "leakage" | "vacuum";
            specification: components["schemas"]["CaseGaugeInput"] | components["schemas"]["LeakageTesterInput"];
            checkDue: string | null;
            retiredAt: string | null;
            version: number;
        };
        /**
         * @example {
         *       "kind": "compression",
         *       "name": "Screw-in gauge",
         *       "specification": {
         *         "span": {
         *           "value": 300,
         *           "unit": "psi"
         *         },
         *         "accuracyClass": 1.6,
         *         "resolution": {
         *           "value": 1,
         *           "unit": "psi"
         *         }
         *       },
         *       "checkDue": "2026-06-20"
         *     }
         */
        NewGaugeInput: {
            /** @enum {string} */
            kind: "compression" | "vacuum";
            name: string;
            specification: components["schemas"]["CaseGaugeInput"];
            /** @default null */
            checkDue?: string | null;
        } | {
            /** @constant */
            kind: "leakage";
            name: string;
            specification: components["schemas"]["LeakageTesterInput"];
            /** @default null */
            checkDue?: string | null;
        };
        /**
         * @example {
         *       "name": "Screw-in gauge",
         *       "specification": {
         *         "span": {
         *           "value": 300,
         *           "unit": "psi"
         *         },
         *         "accuracyClass": 1.6,
         *         "resolution": {
         *           "value": 1,
         *           "unit": "psi"
         *         }
         *       },
         *       "checkDue": "2026-06-20",
         *       "retired": false
         *     }
         */
        GaugeEditInput: {
            name?: string;
            specification?: components["schemas"]["CaseGaugeInput"] | components["schemas"]["LeakageTesterInput"];
            checkDue?: string | null;
            retired?: boolean;
        };
        CatalogueItemInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            garage: string;
            /** @enum {string} */
            kind: "labour" | "part";
            operation: components["schemas"]["OperationInput"] | null;
            text: string;
            minutes: number | null;
            unitPriceMinor: number | null;
            taxBasisPoints: number;
            retiredAt: string | null;
            version: number;
        };
        /**
         * @example {
         *       "kind": "labour",
         *       "operation": "head-valves",
         *       "text": "Head off, valve and seat",
         *       "minutes": 540,
         *       "unitPriceMinor": 0,
         *       "taxBasisPoints": 2300
         *     }
         */
        NewCatalogueItemInput: {
            /** @enum {string} */
            kind: "labour" | "part";
            operation: components["schemas"]["OperationInput"] | null;
            text: string;
            minutes: number | null;
            unitPriceMinor: number | null;
            taxBasisPoints: number;
        };
        /**
         * @example {
         *       "kind": "labour",
         *       "operation": "head-valves",
         *       "text": "Head off, valve and seat",
         *       "minutes": 540,
         *       "unitPriceMinor": 0,
         *       "taxBasisPoints": 2300,
         *       "retired": false
         *     }
         */
        CatalogueItemEditInput: {
            /** @enum {string} */
            kind?: "labour" | "part";
            operation?: components["schemas"]["OperationInput"] | null;
            text?: string;
            minutes?: number | null;
            unitPriceMinor?: number | null;
            taxBasisPoints?: number;
            retired?: boolean;
        };
        CustomerInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            garage: string;
            name: string;
            phone: string | null;
            email: string | null;
            address: string | null;
            note: string | null;
            erasedAt: string | null;
            version: number;
        };
        /**
         * @example {
         *       "name": "Ada Wrenford",
         *       "phone": "+351 555 0142",
         *       "email": "ada@example.test",
         *       "address": "3 Hill Steps",
         *       "note": "Rings after six"
         *     }
         */
        NewCustomerInput: {
            name: string;
            /** @default null */
            phone?: string | null;
            /** @default null */
            email?: string | null;
            /** @default null */
            address?: string | null;
            /** @default null */
            note?: string | null;
        };
        /**
         * @example {
         *       "name": "Ada Wrenford",
         *       "phone": "+351 555 0142",
         *       "email": "ada@example.test",
         *       "address": "3 Hill Steps",
         *       "note": "Rings after six"
         *     }
         */
        CustomerEditInput: {
            name?: string;
            phone?: string | null;
            email?: string | null;
            address?: string | null;
            note?: string | null;
        };
        VehicleInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            garage: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            customer: string;
            /**
             * @description registration plate as written
             * @example FX 204 B
             */
            plate: string;
            /** @example grey estate */
            description: string;
            year: number | null;
            note: string | null;
            engine: string | null;
            version: number;
        };
        /**
         * @example {
         *       "customer": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b",
         *       "plate": "QX 27 NB",
         *       "description": "grey estate",
         *       "year": 1974,
         *       "note": "Choke by hand"
         *     }
         */
        NewVehicleInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            customer: string;
            /**
             * @description registration plate as written
             * @example FX 204 B
             */
            plate: string;
            /** @example grey estate */
            description: string;
            /** @default null */
            year?: number | null;
            /** @default null */
            note?: string | null;
        };
        /**
         * @example {
         *       "customer": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b",
         *       "plate": "QX 27 NB",
         *       "description": "grey estate",
         *       "year": 1974,
         *       "note": "Choke by hand"
         *     }
         */
        VehicleEditInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            customer?: string;
            /**
             * @description registration plate as written
             * @example FX 204 B
             */
            plate?: string;
            /** @example grey estate */
            description?: string;
            year?: number | null;
            note?: string | null;
        };
        EngineSpecificationInput: {
            /** @enum {string} */
            fuel: "petrol" | "diesel";
            cycle?: 4 | 2;
            /** @enum {string} */
            injection?: "none" | "port" | "direct" | "mechanical-diesel" | "common-rail";
            /** @enum {string} */
            layout: "inline" | "v" | "flat";
            cylinders: number;
            firingOrder?: number[];
            banks?: number[][];
            gaskets?: number[][];
            boreMm?: number;
            strokeMm?: number;
            rodLengthMm?: number;
            compressionRatio?: number;
            intakeClosesDegAbdc?: number;
            decompressor?: boolean;
            /** @enum {string} */
            valveGear?: "overhead" | "side";
            /** @enum {string} */
            cooling?: "water" | "air";
            /** @enum {string} */
            camshaft?: "standard" | "other";
            limits?: components["schemas"]["EngineLimitsInput"];
            hotExhaustCylinders?: number[];
        };
        EngineOwnValuesInput: {
            /** @enum {string} */
            fuel?: "petrol" | "diesel";
            cycle?: 4 | 2;
            /** @enum {string} */
            injection?: "none" | "port" | "direct" | "mechanical-diesel" | "common-rail";
            /** @enum {string} */
            layout?: "inline" | "v" | "flat";
            cylinders?: number;
            firingOrder?: number[];
            banks?: number[][];
            gaskets?: number[][];
            boreMm?: number;
            strokeMm?: number;
            rodLengthMm?: number;
            compressionRatio?: number;
            intakeClosesDegAbdc?: number;
            decompressor?: boolean;
            /** @enum {string} */
            valveGear?: "overhead" | "side";
            /** @enum {string} */
            cooling?: "water" | "air";
            /** @enum {string} */
            camshaft?: "standard" | "other";
            limits?: components["schemas"]["EngineLimitsInput"];
            hotExhaustCylinders?: number[];
        };
        LeadPlanInput: {
            /** @enum {string} */
            rotor: "clockwise" | "anticlockwise";
            leadOneAtOClock: number;
        };
        EngineFamilyInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            name: string;
            specification: components["schemas"]["EngineSpecificationInput"];
            /** @description field of the specification -> where its value comes from */
            basis: {
                [key: string]: string;
            };
            leads: components["schemas"]["LeadPlanInput"] | null;
            version: number;
        };
        /**
         * @example {
         *       "name": "Iron four, 1.8",
         *       "specification": {
         *         "fuel": "petrol",
         *         "layout": "inline",
         *         "cylinders": 4,
         *         "firingOrder": [
         *           1,
         *           3,
         *           4,
         *           2
         *         ],
         *         "boreMm": 84,
         *         "strokeMm": 89,
         *         "compressionRatio": 8.8,
         *         "limits": {
         *           "minimum": {
         *             "value": 120,
         *             "unit": "psi"
         *           },
         *           "spreadPercent": 10
         *         }
         *       },
         *       "basis": {
         *         "limits": "workshop manual, page 12"
         *       },
         *       "leads": {
         *         "rotor": "clockwise",
         *         "leadOneAtOClock": 5
         *       }
         *     }
         */
        NewEngineFamilyInput: {
            name: string;
            specification: components["schemas"]["EngineSpecificationInput"];
            /** @description field of the specification -> where its value comes from */
            basis: {
                [key: string]: string;
            };
            /** @default null */
            leads?: components["schemas"]["LeadPlanInput"] | null;
        };
        /**
         * @example {
         *       "name": "Iron four, 1.8",
         *       "specification": {
         *         "fuel": "petrol",
         *         "layout": "inline",
         *         "cylinders": 4,
         *         "firingOrder": [
         *           1,
         *           3,
         *           4,
         *           2
         *         ],
         *         "boreMm": 84,
         *         "strokeMm": 89,
         *         "compressionRatio": 8.8,
         *         "limits": {
         *           "minimum": {
         *             "value": 120,
         *             "unit": "psi"
         *           },
         *           "spreadPercent": 10
         *         }
         *       },
         *       "basis": {
         *         "limits": "workshop manual, page 12"
         *       },
         *       "leads": {
         *         "rotor": "clockwise",
         *         "leadOneAtOClock": 5
         *       }
         *     }
         */
        EngineFamilyEditInput: {
            name?: string;
            specification?: components["schemas"]["EngineSpecificationInput"];
            /** @description field of the specification -> where its value comes from */
            basis?: {
                [key: string]: string;
            };
            leads?: components["schemas"]["LeadPlanInput"] | null;
        };
        EngineInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            family: {
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                id: string;
                name: string;
            } | null;
            description: string;
            stampedNumber: string | null;
            specification: components["schemas"]["EngineSpecificationInput"];
            ownValues: components["schemas"]["EngineOwnValuesInput"];
            history: components["schemas"]["EngineHistoryInput"];
            leads: components["schemas"]["LeadPlanInput"] | null;
            fittedIn: {
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                fitting: string;
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                vehicle: string;
                plate: string | null;
                /**
                 * Format: date-time
                 * @description instant, RFC 3339
                 * @example 2026-05-06T10:20:00.000Z
                 */
                from: string;
            } | null;
            version: number;
        };
        /**
         * @example {
         *       "family": null,
         *       "description": "iron four of the grey estate",
         *       "stampedNumber": "IF-20417",
         *       "ownValues": {
         *         "fuel": "petrol",
         *         "layout": "inline",
         *         "cylinders": 4,
         *         "firingOrder": [
         *           1,
         *           3,
         *           4,
         *           2
         *         ],
         *         "boreMm": 84,
         *         "strokeMm": 89,
         *         "compressionRatio": 8.8,
         *         "limits": {
         *           "minimum": {
         *             "value": 120,
         *             "unit": "psi"
         *           },
         *           "spreadPercent": 10
         *         }
         *       },
         *       "history": {
         *         "kmSinceRings": 40000,
         *         "overheated": false
         *       }
         *     }
         */
        NewEngineInput: {
            /** @default null */
            family?: string | null;
            description: string;
            /** @default null */
            stampedNumber?: string | null;
            /** @default {} */
            ownValues?: components["schemas"]["EngineOwnValuesInput"];
            /** @default {} */
            history?: components["schemas"]["EngineHistoryInput"];
        };
        /**
         * @example {
         *       "description": "iron four of the grey estate",
         *       "stampedNumber": "IF-20417",
         *       "ownValues": {
         *         "fuel": "petrol",
         *         "layout": "inline",
         *         "cylinders": 4,
         *         "firingOrder": [
         *           1,
         *           3,
         *           4,
         *           2
         *         ],
         *         "boreMm": 84,
         *         "strokeMm": 89,
         *         "compressionRatio": 8.8,
         *         "limits": {
         *           "minimum": {
         *             "value": 120,
         *             "unit": "psi"
         *           },
         *           "spreadPercent": 10
         *         }
         *       },
         *       "history": {
         *         "kmSinceRings": 40000,
         *         "overheated": false
         *       }
         *     }
         */
        EngineEditInput: {
            family?: string | null;
            description?: string;
            stampedNumber?: string | null;
            ownValues?: components["schemas"]["EngineOwnValuesInput"];
            history?: components["schemas"]["EngineHistoryInput"];
        };
        FittingInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            engine: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            vehicle: string;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            from: string;
            until: string | null;
            odometerKm: number | null;
        };
        /**
         * @example {
         *       "vehicle": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b",
         *       "from": "2026-05-06T10:20:00.000Z",
         *       "odometerKm": 120000
         *     }
         */
        NewFittingInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            vehicle: string;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            from?: string;
            /** @default null */
            odometerKm?: number | null;
        };
        /**
         * @example {
         *       "until": "2026-05-06T10:20:00.000Z"
         *     }
         */
        RemovalInput: {
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            until?: string;
        };
        /**
         * @example {
         *       "kind": "rebuilt",
         *       "at": "2026-05-06T10:20:00.000Z",
         *       "text": "New rings and bearings"
         *     }
         */
        NewEngineEventInput: {
            /** @enum {string} */
            kind: "rebuilt" | "head-off" | "note";
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            at?: string;
            text: string;
        };
        EngineEventInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            engine: string;
            /** @enum {string} */
            kind: "rebuilt" | "head-off" | "note";
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            at: string;
            text: string;
        };
        EngineHistoryEntryInput: {
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            at: string;
            /** @enum {string} */
            kind: "fitted" | "removed" | "job" | "session" | "finding";
            garage: string;
            plate: string | null;
            job: string | null;
            code: string | null;
            text: string | null;
        };
        /**
         * @example {
         *       "same": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4c",
         *       "reason": "Booked in twice under two plates"
         *     }
         */
        SameEngineInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            same: string;
            reason: string;
        };
        /** @enum {string} */
        JobStateInput: "handed-over" | "cancelled" | "ready" | "waiting-for-parts" | "waiting-for-manager" | "waiting-for-customer" | "retest-due" | "in-repair" | "approved" | "testing" | "in-bay" | "booked";
        StandingInput: {
            state: components["schemas"]["JobStateInput"];
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            since: string;
            /** @enum {string} */
            waitsFor: "manager" | "customer" | "parts" | "technician" | "front-desk" | "nobody";
            /** @description name of the person or thing waited on, where one is known */
            waitsOn: string | null;
            /** @description next call, arrival of parts, or the promise to the customer */
            until: string | null;
            beside: ("draft" | "sent-back" | "refused" | "sent" | "declined" | "nothing-found" | "release-passed" | "release-failed" | "release-waived" | "unplaced-readings" | "excess-needs-permission")[];
        };
        PriorWorkInput: {
            headTorqued?: boolean;
            clearancesSet?: boolean;
            ringsNew?: boolean;
            gasketNew?: boolean;
            valvesGround?: boolean;
            overheated?: boolean;
            monthsStored?: number;
            note?: string;
        };
        JobSummaryInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            garage: string;
            /** @example K 27 */
            code: string;
            plate: string;
            /** @description the vehicle in a few words */
            vehicle: string;
            customer: string;
            complaint: string;
            bay: {
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                id: string;
                name: string;
            } | null;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            engine: string;
            cylinders: number;
            standing: components["schemas"]["StandingInput"];
            promisedAt: string | null;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            bookedAt: string;
        };
        ContactInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /** @enum {string} */
            kind: "call" | "message" | "visit" | "note";
            text: string;
            nextAt: string | null;
            by: components["schemas"]["PersonRefInput"] | null;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            at: string;
        };
        /**
         * @example {
         *       "kind": "call",
         *       "text": "Will think it over",
         *       "nextAt": "2026-05-06T10:20:00.000Z"
         *     }
         */
        NewContactInput: {
            /** @enum {string} */
            kind: "call" | "message" | "visit" | "note";
            text: string;
            /** @default null */
            nextAt?: string | null;
        };
        PartsOrderInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            text: string;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            orderedAt: string;
            orderedBy: components["schemas"]["PersonRefInput"] | null;
            expectedAt: string | null;
            arrivedAt: string | null;
            arrivedBy: components["schemas"]["PersonRefInput"] | null;
        };
        /**
         * @example {
         *       "text": "Exhaust valve, one",
         *       "expectedAt": "2026-05-06T10:20:00.000Z"
         *     }
         */
        NewPartsOrderInput: {
            text: string;
            /** @default null */
            expectedAt?: string | null;
        };
        JobInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            garage: string;
            /** @example K 27 */
            code: string;
            plate: string;
            /** @description the vehicle in a few words */
            vehicle: string;
            customer: string;
            complaint: string;
            bay: {
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                id: string;
                name: string;
            } | null;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            engine: string;
            cylinders: number;
            standing: components["schemas"]["StandingInput"];
            promisedAt: string | null;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            bookedAt: string;
            /** @description null for who may not see it */
            customerRecord: components["schemas"]["CustomerInput"] | null;
            vehicleRecord: components["schemas"]["VehicleInput"];
            engineRecord: components["schemas"]["EngineInput"];
            odometerKm: number | null;
            priorWork: components["schemas"]["PriorWorkInput"];
            comeBackOf: string | null;
            bookedBy: components["schemas"]["PersonRefInput"] | null;
            contacts: components["schemas"]["ContactInput"][];
            parts: components["schemas"]["PartsOrderInput"][];
            /** @description what the customer has permitted so far */
            permitted: {
                /** @description money in minor units of the currency named beside it */
                amountMinor: number;
                /**
                 * @description ISO 4217 currency code
                 * @example EUR
                 */
                currency: string;
            } | null;
            cancelReason: string | null;
            handedOverAt: string | null;
            version: number;
        };
        /**
         * @example {
         *       "customer": {
         *         "name": "Ada Wrenford",
         *         "phone": "+351 555 0142",
         *         "email": "ada@example.test",
         *         "address": "3 Hill Steps",
         *         "note": "Rings after six"
         *       },
         *       "vehicle": {
         *         "plate": "QX 27 NB",
         *         "description": "grey estate",
         *         "year": 1974
         *       },
         *       "engine": {
         *         "description": "iron four",
         *         "ownValues": {
         *           "fuel": "petrol",
         *           "layout": "inline",
         *           "cylinders": 4,
         *           "firingOrder": [
         *             1,
         *             3,
         *             4,
         *             2
         *           ],
         *           "boreMm": 84,
         *           "strokeMm": 89,
         *           "compressionRatio": 8.8,
         *           "limits": {
         *             "minimum": {
         *               "value": 120,
         *               "unit": "psi"
         *             },
         *             "spreadPercent": 10
         *           }
         *         }
         *       },
         *       "complaint": "Shakes at idle, down on power",
         *       "odometerKm": 182400,
         *       "priorWork": {
         *         "headTorqued": true,
         *         "clearancesSet": false,
         *         "ringsNew": false,
         *         "gasketNew": true,
         *         "valvesGround": false,
         *         "overheated": false,
         *         "monthsStored": 3,
         *         "note": "Gasket done last year"
         *       },
         *       "promisedAt": "2026-05-06T10:20:00.000Z",
         *       "bay": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b",
         *       "comeBackOf": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4c",
         *       "fulfils": [
         *         "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b"
         *       ]
         *     }
         */
        NewJobInput: {
            customer: string | components["schemas"]["NewCustomerInput"];
            vehicle: string | {
                /**
                 * @description registration plate as written
                 * @example FX 204 B
                 */
                plate: string;
                /** @example grey estate */
                description: string;
                /** @default null */
                year?: number | null;
                /** @default null */
                note?: string | null;
            };
            engine?: string | components["schemas"]["NewEngineInput"];
            complaint: string;
            /** @default null */
            odometerKm?: number | null;
            /** @default {} */
            priorWork?: components["schemas"]["PriorWorkInput"];
            /** @default null */
            promisedAt?: string | null;
            /** @default null */
            bay?: string | null;
            /** @default null */
            comeBackOf?: string | null;
            /**
             * @description follow-up retests that this visit is for
             * @default []
             */
            fulfils?: string[];
        };
        /**
         * @example {
         *       "complaint": "Shakes at idle",
         *       "odometerKm": 182410,
         *       "priorWork": {
         *         "headTorqued": true,
         *         "clearancesSet": false,
         *         "ringsNew": false,
         *         "gasketNew": true,
         *         "valvesGround": false,
         *         "overheated": false,
         *         "monthsStored": 3,
         *         "note": "Gasket done last year"
         *       },
         *       "promisedAt": "2026-05-06T10:20:00.000Z"
         *     }
         */
        JobEditInput: {
            complaint?: string;
            odometerKm?: number | null;
            priorWork?: components["schemas"]["PriorWorkInput"];
            promisedAt?: string | null;
        };
        /**
         * @example {
         *       "bay": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b"
         *     }
         */
        BayPlacementInput: {
            bay: string | null;
        };
        /**
         * @example {
         *       "reason": "Sold as it stands"
         *     }
         */
        CancellationInput: {
            reason: string;
        };
        /**
         * @example {
         *       "note": "Even and tight on all four"
         *     }
         */
        TestingClosedInput: {
            note?: string;
        };
        /**
         * @example {
         *       "odometerKm": 182420,
         *       "note": "Mind the first miles",
         *       "followUps": [
         *         {
         *           "reason": "Head torqued after the first 1000 km",
         *           "latest": "2026-06-20",
         *           "odometerKm": 183400,
         *           "event": "first service"
         *         }
         *       ]
         *     }
         */
        HandOverInput: {
            /** @default null */
            odometerKm?: number | null;
            note?: string;
            /** @default [] */
            followUps?: {
                reason: string;
                /** @default null */
                latest?: string | null;
                /** @default null */
                odometerKm?: number | null;
                /** @default null */
                event?: string | null;
            }[];
        };
        FloorInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            garage: string;
            name: string;
            bays: {
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                id: string;
                name: string;
                job: components["schemas"]["JobSummaryInput"] | null;
            }[];
            /** @description open jobs in no bay and in none of the lists */
            elsewhere: components["schemas"]["JobSummaryInput"][];
            waitsForDecision: components["schemas"]["JobSummaryInput"][];
            retestsDue: {
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                retest: string;
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                job: string;
                code: string;
                plate: string;
                /** @enum {string} */
                kind: "release" | "follow-up";
                reason: string;
                due: string | null;
                overdueDays: number | null;
                bookedFor: string | null;
            }[];
            ready: components["schemas"]["JobSummaryInput"][];
        };
        SearchHitInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            garage: string;
            /** @example K 27 */
            code: string;
            plate: string;
            /** @description the vehicle in a few words */
            vehicle: string;
            customer: string;
            complaint: string;
            bay: {
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                id: string;
                name: string;
            } | null;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            engine: string;
            cylinders: number;
            standing: components["schemas"]["StandingInput"];
            promisedAt: string | null;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            bookedAt: string;
            /** @enum {string} */
            matched: "code" | "plate" | "customer" | "phone";
        };
        /** @enum {string} */
        SessionPurposeInput: "test" | "release" | "follow-up";
        /**
         * @example {
         *       "reading": {
         *         "test": "compression",
         *         "cylinder": 3,
         *         "pressure": {
         *           "value": 140,
         *           "unit": "psi"
         *         },
         *         "firstStroke": {
         *           "value": 60,
         *           "unit": "psi"
         *         },
         *         "strokeCount": 8,
         *         "seq": 3
         *       },
         *       "takenAt": "2026-05-06T10:20:00.000Z"
         *     }
         */
        ReadingPutInput: {
            reading?: components["schemas"]["EnteredReadingInput"];
            /**
             * Format: date-time
             * @description the tablet's clock
             * @example 2026-05-06T10:20:00.000Z
             */
            takenAt: string;
            /**
             * Format: uuid
             * @description person who took it, where that is not who sends it
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            takenBy?: string;
            /** @constant */
            offline?: true;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            replaces?: string;
            /** @constant */
            withdrawn?: true;
            reason?: string;
        };
        ReadingKeptInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            receivedAt: string;
            /** @enum {string} */
            state: "placed" | "unplaced";
        };
        StoredReadingInput: {
            /**
             * Format: uuid
             * @description identifier made by the client, a UUID version 7
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            session: string;
            reading: components["schemas"]["EnteredReadingInput"] | null;
            /** @enum {string} */
            state: "placed" | "unplaced";
            current: boolean;
            replaces: string | null;
            replacedBy: string | null;
            withdrawn: boolean;
            reason: string | null;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            takenAt: string;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            receivedAt: string;
            takenBy: components["schemas"]["PersonRefInput"] | null;
            offline: boolean;
        };
        SessionInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            job: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            engine: string;
            purpose: components["schemas"]["SessionPurposeInput"];
            conditions: components["schemas"]["ConditionsInput"];
            gauge: {
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                id: string;
                name: string;
            } | null;
            gaugeSpecification: components["schemas"]["CaseGaugeInput"] | null;
            tester: {
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                id: string;
                name: string;
            } | null;
            testerSpecification: components["schemas"]["LeakageTesterInput"] | null;
            apps: string[];
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            openedAt: string;
            openedBy: components["schemas"]["PersonRefInput"] | null;
            closedAt: string | null;
            readings: components["schemas"]["StoredReadingInput"][];
            version: number;
        };
        /**
         * @example {
         *       "purpose": "test",
         *       "conditions": {
         *         "engine": "hot",
         *         "throttle": "open",
         *         "plugsOut": "all",
         *         "strokes": 8,
         *         "batteryVolts": 12.4,
         *         "altitudeM": 12,
         *         "airTempC": 18,
         *         "clearancesSet": true,
         *         "headTorqued": true
         *       },
         *       "gauge": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b",
         *       "tester": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b",
         *       "apps": [],
         *       "openedAt": "2026-05-06T10:20:00.000Z"
         *     }
         */
        NewSessionInput: {
            /**
             * Format: uuid
             * @description made by the tablet when it opens a session without network; the same id again answers the same session
             */
            id?: string;
            /** @default test */
            purpose?: components["schemas"]["SessionPurposeInput"];
            conditions: components["schemas"]["ConditionsInput"];
            /** @default null */
            gauge?: string | null;
            /** @default null */
            tester?: string | null;
            /** @default [] */
            apps?: string[];
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            openedAt?: string;
        };
        /**
         * @example {
         *       "picture": "iVBORw0KGgoAAAANSUhEUgAAAAgAAAAICAMAAADz0U65AAAAA1BMVEV3d3dY20ihAAAACXBIWXMAAAPoAAAD6AG1e1JrAAAADElEQVQImWNgoA4AAABIAAF7pRHIAAAAAElFTkSuQmCC",
         *       "takenAt": "2026-05-06T10:20:00.000Z",
         *       "takenBy": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b"
         *     }
         */
        PhotoPutInput: {
            /** @description a JPEG or PNG picture in base64, at most 4000000 characters */
            picture: string;
            /**
             * Format: date-time
             * @description the tablet's clock
             * @example 2026-05-06T10:20:00.000Z
             */
            takenAt: string;
            /**
             * Format: uuid
             * @description person who took it, where that is not who sends it
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            takenBy?: string;
            /** @constant */
            offline?: true;
        };
        PhotoInput: {
            /**
             * Format: uuid
             * @description identifier made by the client, a UUID version 7
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            job: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            reading: string;
            sha256: string;
            bytes: number;
            width: number;
            height: number;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            takenAt: string;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            receivedAt: string;
            takenBy: components["schemas"]["PersonRefInput"] | null;
            offline: boolean;
            withdrawn: {
                /**
                 * Format: date-time
                 * @description instant, RFC 3339
                 * @example 2026-05-06T10:20:00.000Z
                 */
                at: string;
                by: components["schemas"]["PersonRefInput"] | null;
                reason: string;
            } | null;
        };
        /**
         * @example {
         *       "reason": "Taken of the wrong plug"
         *     }
         */
        PhotoWithdrawalInput: {
            reason: string;
        };
        JobEvaluationInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            job: string;
            case: components["schemas"]["CaseInput"];
            readingIds: string[];
            evaluation: components["schemas"]["EvaluationInput"];
        };
        StoredEvaluationInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            job: string;
            model: string;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            createdAt: string;
            case: components["schemas"]["CaseInput"];
            evaluation: components["schemas"]["EvaluationInput"];
        };
        /**
         * @example {
         *       "decision": "declined",
         *       "suggestion": {
         *         "tests": [
         *           {
         *             "test": "leakage",
         *             "cylinders": [
         *               3
         *             ]
         *           }
         *         ],
         *         "bits": 1.1,
         *         "minutes": 5.5,
         *         "bitsPerMinute": 0.2,
         *         "says": "Leakage, listening at every point on cylinder 3."
         *       },
         *       "reason": "No air in this bay today",
         *       "instead": "wet test"
         *     }
         */
        NewSuggestionDecisionInput: {
            /** @constant */
            decision: "taken";
            suggestion: components["schemas"]["SuggestionInput"];
        } | {
            /** @constant */
            decision: "declined";
            suggestion: components["schemas"]["SuggestionInput"];
            reason: string;
            /** @default null */
            instead?: string | null;
        };
        SuggestionDecisionInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            job: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            evaluation: string;
            /** @enum {string} */
            decision: "taken" | "declined";
            suggestion: components["schemas"]["SuggestionInput"];
            instead: string | null;
            reason: string | null;
            by: components["schemas"]["PersonRefInput"] | null;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            at: string;
        };
        /** @enum {string} */
        TrailKindInput: "job-booked" | "session-opened" | "session-closed" | "reading" | "reading-replaced" | "reading-withdrawn" | "photo" | "photo-withdrawn" | "evaluation" | "suggestion-taken" | "suggestion-declined" | "testing-closed" | "quote-sent" | "quote-approved" | "quote-sent-back" | "quote-refused" | "approval-withdrawn" | "authorisation-given" | "authorisation-declined" | "repair-started" | "repair-finished" | "finding" | "retest-promised" | "retest-date" | "retest-passed" | "retest-failed" | "retest-waived" | "handed-over" | "cancelled" | "fitted" | "removed" | "engine-event" | "same-engine";
        TrailEntryInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            engine: string;
            job: string | null;
            garage: string | null;
            seq: number;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            at: string;
            kind: components["schemas"]["TrailKindInput"];
            actor: {
                kind: string;
                id: string;
                name: string | null;
            } | null;
            body: unknown | null;
            previousHash: string;
            hash: string;
        };
        TrailCheckInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            engine: string;
            entries: number;
            head: string;
            whole: boolean;
            broken: {
                seq: number;
                says: string;
            } | null;
        };
        NewQuoteLineInput: {
            /** @enum {string} */
            kind: "labour" | "part" | "other";
            /** @default null */
            operation?: components["schemas"]["OperationInput"] | null;
            /** @default [] */
            cylinders?: number[];
            text: string;
            quantity: number;
            /** @description money in minor units of the currency named beside it */
            rateMinor: number;
            taxBasisPoints: number;
        };
        QuoteLineInput: {
            /** @enum {string} */
            kind: "labour" | "part" | "other";
            operation: components["schemas"]["OperationInput"] | null;
            cylinders: number[];
            text: string;
            quantity: number;
            /** @enum {string} */
            unit: "hour" | "piece";
            rateMinor: number;
            taxBasisPoints: number;
            amountMinor: number;
        };
        TotalsInput: {
            /**
             * @description ISO 4217 currency code
             * @example EUR
             */
            currency: string;
            pricesIncludeTax: boolean;
            netMinor: number;
            taxMinor: number;
            totalMinor: number;
            taxes: {
                basisPoints: number;
                onMinor: number;
                taxMinor: number;
            }[];
        };
        QuoteDraftInput: {
            lines: components["schemas"]["QuoteLineInput"][];
            note: string | null;
            author: components["schemas"]["PersonRefInput"];
            totals: components["schemas"]["TotalsInput"];
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            updatedAt: string;
            version: number;
        };
        /**
         * @example {
         *       "lines": [
         *         {
         *           "kind": "labour",
         *           "operation": "head-valves",
         *           "cylinders": [
         *             3
         *           ],
         *           "text": "Head off, exhaust valve of 3 and its seat",
         *           "quantity": 8.5,
         *           "rateMinor": 7800,
         *           "taxBasisPoints": 2300
         *         }
         *       ],
         *       "note": "Look at the guides when it is off."
         *     }
         */
        QuoteDraftPutInput: {
            lines: components["schemas"]["NewQuoteLineInput"][];
            /** @default null */
            note?: string | null;
        };
        ApprovalInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /** @enum {string} */
            kind: "approved" | "sent-back" | "refused" | "withdrawn";
            by: components["schemas"]["PersonRefInput"];
            deputyFor: components["schemas"]["PersonRefInput"] | null;
            ownQuote: boolean;
            reason: string | null;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            at: string;
        };
        /**
         * @example {
         *       "reason": "Nobody else here to ask"
         *     }
         */
        ApproveInput: {
            reason?: string;
        };
        /**
         * @example {
         *       "question": "Is it a tight clearance? Check the rockers of 3 first."
         *     }
         */
        SendBackInput: {
            question: string;
        };
        /**
         * @example {
         *       "reason": "Not worth it on this engine"
         *     }
         */
        RefuseInput: {
            reason: string;
        };
        AuthorisationInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            quoteVersion: string;
            /** @enum {string} */
            kind: "given" | "declined";
            personName: string;
            /** @enum {string} */
            method: "in-person" | "phone" | "message" | "written";
            numberCalled: string | null;
            /** @description money in minor units of the currency named beside it */
            amountMinor: number;
            /**
             * @description ISO 4217 currency code
             * @example EUR
             */
            currency: string;
            partsBack: boolean;
            note: string | null;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            givenAt: string;
            recordedBy: components["schemas"]["PersonRefInput"] | null;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            at: string;
        };
        /**
         * @example {
         *       "kind": "given",
         *       "personName": "Ada Wrenford",
         *       "method": "phone",
         *       "numberCalled": "+351 555 0142",
         *       "amountMinor": 93204,
         *       "partsBack": true,
         *       "note": "Wants the valve to look at",
         *       "givenAt": "2026-05-06T10:20:00.000Z"
         *     }
         */
        NewAuthorisationInput: {
            /** @enum {string} */
            kind: "given" | "declined";
            personName: string;
            /** @enum {string} */
            method: "in-person" | "phone" | "message" | "written";
            numberCalled?: string;
            /** @description money in minor units of the currency named beside it */
            amountMinor?: number;
            /** @default false */
            partsBack?: boolean;
            note?: string;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            givenAt: string;
        };
        QuoteVersionInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            job: string;
            number: number;
            author: components["schemas"]["PersonRefInput"];
            note: string | null;
            evaluation: string | null;
            lines: components["schemas"]["QuoteLineInput"][];
            totals: components["schemas"]["TotalsInput"];
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            sentAt: string;
            approvals: components["schemas"]["ApprovalInput"][];
            authorisations: components["schemas"]["AuthorisationInput"][];
        };
        QuoteInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            job: string;
            draft: components["schemas"]["QuoteDraftInput"] | null;
            versions: components["schemas"]["QuoteVersionInput"][];
            /** @description money in minor units of the currency named beside it */
            permittedMinor: number;
            /**
             * @description ISO 4217 currency code
             * @example EUR
             */
            currency: string;
        };
        SuggestedLineInput: {
            /** @enum {string} */
            kind: "labour" | "part" | "other";
            /** @default null */
            operation?: components["schemas"]["OperationInput"] | null;
            /** @default [] */
            cylinders?: number[];
            text: string;
            quantity: number;
            /** @description money in minor units of the currency named beside it */
            rateMinor: number;
            taxBasisPoints: number;
            says: string;
            cures: number | null;
        };
        DecisionInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            job: string;
            code: string;
            plate: string;
            vehicle: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            quoteVersion: string;
            number: number;
            author: components["schemas"]["PersonRefInput"];
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            sentAt: string;
            totals: components["schemas"]["TotalsInput"];
            mayApprove: boolean;
            why: string | null;
        };
        RepairInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            job: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            quoteVersion: string;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            startedAt: string;
            startedBy: components["schemas"]["PersonRefInput"] | null;
            finishedAt: string | null;
            finishedBy: components["schemas"]["PersonRefInput"] | null;
            operations: components["schemas"]["OperationInput"][];
            note: string | null;
        };
        /**
         * @example {
         *       "operations": [
         *         "head-valves"
         *       ],
         *       "note": "Guides were good"
         *     }
         */
        FinishRepairInput: {
            /** @default [] */
            operations?: components["schemas"]["OperationInput"][];
            note?: string;
        };
        FindingCodeInput: components["schemas"]["FaultInput"] | "gasket-between" | ("throttle-closed" | "slow-cranking" | "valve-timing" | "worn-evenly" | "gauge-error") | "nothing";
        FindingInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            job: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            engine: string;
            evaluation: string | null;
            cylinders: number[];
            fault: components["schemas"]["FindingCodeInput"];
            seen: string;
            replaces: string | null;
            believed: number | null;
            by: components["schemas"]["PersonRefInput"] | null;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            at: string;
        };
        /**
         * @example {
         *       "cylinders": [
         *         3
         *       ],
         *       "fault": "exhaust-valve-leak",
         *       "seen": "Seat burnt over a quarter of its ring"
         *     }
         */
        NewFindingInput: {
            cylinders: number[];
            fault: components["schemas"]["FindingCodeInput"];
            seen: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            replaces?: string;
        };
        /** @enum {string} */
        RetestKindInput: "release" | "follow-up";
        RetestDateInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            latest: string | null;
            odometerKm: number | null;
            event: string | null;
            bookedFor: string | null;
            reason: string | null;
            by: components["schemas"]["PersonRefInput"] | null;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            at: string;
        };
        RetestInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            job: string;
            code: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            engine: string;
            kind: components["schemas"]["RetestKindInput"];
            reason: string;
            baselineSession: string | null;
            session: string | null;
            fulfilledByJob: string | null;
            dates: components["schemas"]["RetestDateInput"][];
            overdueDays: number | null;
            outcome: ("passed" | "failed" | "waived") | null;
            outcomeReason: string | null;
            decidedAt: string | null;
            decidedBy: components["schemas"]["PersonRefInput"] | null;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            createdAt: string;
        };
        /**
         * @example {
         *       "reason": "Again after the first 1000 km",
         *       "latest": "2026-06-20",
         *       "odometerKm": 183400,
         *       "event": "first service"
         *     }
         */
        NewRetestInput: {
            reason: string;
            /** @default null */
            baselineSession?: string | null;
            /** @default null */
            latest?: string | null;
            /** @default null */
            odometerKm?: number | null;
            /** @default null */
            event?: string | null;
        };
        /**
         * @example {
         *       "latest": "2026-06-20",
         *       "odometerKm": 183400,
         *       "event": "first service",
         *       "bookedFor": "2026-05-06T10:20:00.000Z",
         *       "reason": "Away until then"
         *     }
         */
        NewRetestDateInput: {
            /** @default null */
            latest?: string | null;
            /** @default null */
            odometerKm?: number | null;
            /** @default null */
            event?: string | null;
            /** @default null */
            bookedFor?: string | null;
            reason: string;
        };
        /**
         * @example {
         *       "outcome": "passed",
         *       "session": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b",
         *       "reason": "Even again"
         *     }
         */
        RetestOutcomeInput: {
            /** @enum {string} */
            outcome: "passed" | "failed";
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            session: string;
            reason?: string;
        };
        /**
         * @example {
         *       "reason": "Owner takes it to his own garage"
         *     }
         */
        WaiverInput: {
            reason: string;
        };
        RetestComparisonInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            retest: string;
            baselineSession: string | null;
            session: string | null;
            comparison: components["schemas"]["ComparisonInput"] | null;
            before: components["schemas"]["EvaluationInput"] | null;
            after: components["schemas"]["EvaluationInput"] | null;
        };
        /** @enum {string} */
        EventKindInput: "job.changed" | "session.opened" | "session.closed" | "reading.kept" | "photo.changed" | "suggestion.decided" | "quote.sent" | "quote.answered" | "authorisation.recorded" | "repair.changed" | "finding.recorded" | "retest.changed" | "garage.changed" | "customer.changed" | "engine.changed" | "trail.heads";
        LiveEventInput: {
            id: string;
            kind: components["schemas"]["EventKindInput"];
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            at: string;
            garage: string | null;
            job: string | null;
            engine: string | null;
            body: {
                [key: string]: unknown;
            };
        };
        ReliabilityInput: {
            garage: string | null;
            findings: number;
            /** @description share of findings that were the leading explanation */
            topOne: number | null;
            topTwo: number | null;
            logLoss: number | null;
            bins: {
                from: number;
                to: number;
                count: number;
                believed: number | null;
                found: number | null;
            }[];
            overrides: {
                declined: number;
                turnedOutRight: number;
            };
        };
        ProblemInput: {
            /** @example /docs/problems/invalid-request */
            type: string;
            title: string;
            status: number;
            detail?: string;
            instance?: string;
            errors?: components["schemas"]["FieldErrorInput"][];
        };
        SecondFactorInput: {
            secret: string;
            uri: string;
        };
        /**
         * @example {
         *       "secret": "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567",
         *       "oneTimeCode": "123456"
         *     }
         */
        SecondFactorKeptInput: {
            secret: string;
            oneTimeCode: string;
        };
        /**
         * @example {
         *       "link": "eblink-example",
         *       "password": "five old spanners"
         *     }
         */
        WayBackInInput: {
            link: string;
            /** @description at least 12 characters */
            password: string;
        };
        KeySetInput: {
            keys: {
                [key: string]: unknown;
            }[];
        };
        StaffMemberInput: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            name: string;
            roles: string[];
        };
        /** @description A pressure as read, with its unit. Gauge pressure unless the field says absolute. */
        Pressure: {
            value: number;
            /** @enum {string} */
            unit: "psi" | "kPa" | "bar" | "kgf/cm2";
        };
        /** @description A pressure above zero, with its unit. */
        PositivePressure: {
            value: number;
            /** @enum {string} */
            unit: "psi" | "kPa" | "bar" | "kgf/cm2";
        };
        /** @description Absolute air pressure at the station (not reduced to sea level). */
        AirPressure: {
            value: number;
            /** @enum {string} */
            unit: "psi" | "kPa" | "bar" | "kgf/cm2";
        };
        /** @description A vacuum reading as a positive depression below the surrounding air. */
        VacuumPressure: {
            value: number;
            /** @enum {string} */
            unit: "psi" | "kPa" | "bar" | "kgf/cm2" | "inHg" | "mbar";
        };
        /** @description How loud at each listening point: 0 none, 1 faint, 2 clear, 3 loud; absent = not listened. */
        Heard: {
            intake?: number;
            exhaust?: number;
            crankcase?: number;
            coolant?: number;
            neighbour?: number;
            outside?: number;
        };
        CompressionReading: {
            /** @constant */
            test: "compression";
            cylinder: number;
            wet?: boolean;
            pressure: components["schemas"]["Pressure"];
            firstStroke?: components["schemas"]["Pressure"];
            strokes?: components["schemas"]["Pressure"][];
            strokeCount?: number;
            running?: boolean;
            snap?: boolean;
            oilMl?: number;
            heldTenSeconds?: boolean;
            seq?: number;
        };
        LeakageReading: {
            /** @constant */
            test: "leakage";
            cylinder: number;
            percent?: number;
            supply?: components["schemas"]["PositivePressure"];
            held?: components["schemas"]["Pressure"];
            heard?: components["schemas"]["Heard"];
            neighbour?: number;
            rockersSlack?: number[];
            wet?: boolean;
            offTopDeg?: number;
        };
        PlugReading: {
            /** @constant */
            test: "plug";
            cylinder: number;
            /** @enum {string} */
            appearance: "tan" | "dry-black" | "wet-oil" | "wet-fuel" | "white" | "damaged";
            afterRunAtSpeed?: boolean;
        };
        PowerBalanceReading: {
            /** @constant */
            test: "power-balance";
            cylinder: number;
            rpmDrop: number;
        };
        VacuumReading: {
            /** @constant */
            test: "vacuum";
            /** @enum {string} */
            pattern: "steady" | "low-steady" | "regular-drop" | "irregular-drop" | "slow-fall";
            reading?: components["schemas"]["VacuumPressure"];
        };
        CoolantGasReading: {
            /** @constant */
            test: "coolant-gas";
            present: boolean;
        };
        BorescopeReading: {
            /** @constant */
            test: "borescope";
            cylinder: number;
            seen: ("burnt-exhaust-valve" | "scored-bore" | "cracked-piston" | "carbon" | "coolant" | "nothing")[];
        };
        ClearanceReading: {
            /** @constant */
            test: "clearance";
            cylinder: number;
            /** @enum {string} */
            valve: "intake" | "exhaust";
            /** @enum {string} */
            state: "right" | "tight" | "loose";
        };
        ValveLiftReading: {
            /** @constant */
            test: "valve-lift";
            cylinder: number;
            /** @enum {string} */
            valve: "intake" | "exhaust";
            mm: number;
        };
        CoolingPressureReading: {
            /** @constant */
            test: "cooling-pressure";
            lostPressure: components["schemas"]["Pressure"];
            minutes: number;
        };
        Observation: {
            /** @constant */
            test: "observation";
            cylinder?: number;
            present?: boolean;
            /** @enum {string} */
            code: "weak-by-hand" | "locked-by-hand" | "smoke-blue-throttle" | "smoke-blue-overrun" | "smoke-white" | "smoke-black" | "breather-smoke" | "water-in-oil" | "petrol-in-oil" | "oil-in-water" | "oil-use-high" | "spits-back" | "bubbles-at-plug-thread" | "bubbles-at-joint" | "better-with-other-plug-and-lead" | "piston-low-at-top";
        };
        CrankingCurrentReading: {
            /** @constant */
            test: "cranking-current";
            samples: {
                seconds: number[];
                amps: number[];
            };
            cylinderOneAt?: number;
        };
        EnteredReading: components["schemas"]["CompressionReading"] | components["schemas"]["LeakageReading"] | components["schemas"]["PlugReading"] | components["schemas"]["PowerBalanceReading"] | components["schemas"]["VacuumReading"] | components["schemas"]["CoolantGasReading"] | components["schemas"]["BorescopeReading"] | components["schemas"]["ClearanceReading"] | components["schemas"]["ValveLiftReading"] | components["schemas"]["CoolingPressureReading"] | components["schemas"]["Observation"] | components["schemas"]["CrankingCurrentReading"];
        Reading: {
            /** @constant */
            test: "compression";
            cylinder: number;
            wet?: boolean;
            pressure: components["schemas"]["Pressure"];
            firstStroke?: components["schemas"]["Pressure"];
            strokes?: components["schemas"]["Pressure"][];
            strokeCount?: number;
            running?: boolean;
            snap?: boolean;
            oilMl?: number;
            heldTenSeconds?: boolean;
            seq?: number;
            session?: string;
        } | {
            /** @constant */
            test: "leakage";
            cylinder: number;
            percent?: number;
            supply?: components["schemas"]["PositivePressure"];
            held?: components["schemas"]["Pressure"];
            heard?: components["schemas"]["Heard"];
            neighbour?: number;
            rockersSlack?: number[];
            wet?: boolean;
            offTopDeg?: number;
            session?: string;
        } | {
            /** @constant */
            test: "plug";
            cylinder: number;
            /** @enum {string} */
            appearance: "tan" | "dry-black" | "wet-oil" | "wet-fuel" | "white" | "damaged";
            afterRunAtSpeed?: boolean;
            session?: string;
        } | {
            /** @constant */
            test: "power-balance";
            cylinder: number;
            rpmDrop: number;
            session?: string;
        } | {
            /** @constant */
            test: "vacuum";
            /** @enum {string} */
            pattern: "steady" | "low-steady" | "regular-drop" | "irregular-drop" | "slow-fall";
            reading?: components["schemas"]["VacuumPressure"];
            session?: string;
        } | {
            /** @constant */
            test: "coolant-gas";
            present: boolean;
            session?: string;
        } | {
            /** @constant */
            test: "borescope";
            cylinder: number;
            seen: ("burnt-exhaust-valve" | "scored-bore" | "cracked-piston" | "carbon" | "coolant" | "nothing")[];
            session?: string;
        } | {
            /** @constant */
            test: "clearance";
            cylinder: number;
            /** @enum {string} */
            valve: "intake" | "exhaust";
            /** @enum {string} */
            state: "right" | "tight" | "loose";
            session?: string;
        } | {
            /** @constant */
            test: "valve-lift";
            cylinder: number;
            /** @enum {string} */
            valve: "intake" | "exhaust";
            mm: number;
            session?: string;
        } | {
            /** @constant */
            test: "cooling-pressure";
            lostPressure: components["schemas"]["Pressure"];
            minutes: number;
            session?: string;
        } | {
            /** @constant */
            test: "observation";
            cylinder?: number;
            present?: boolean;
            /** @enum {string} */
            code: "weak-by-hand" | "locked-by-hand" | "smoke-blue-throttle" | "smoke-blue-overrun" | "smoke-white" | "smoke-black" | "breather-smoke" | "water-in-oil" | "petrol-in-oil" | "oil-in-water" | "oil-use-high" | "spits-back" | "bubbles-at-plug-thread" | "bubbles-at-joint" | "better-with-other-plug-and-lead" | "piston-low-at-top";
            session?: string;
        } | {
            /** @constant */
            test: "cranking-current";
            samples: {
                seconds: number[];
                amps: number[];
            };
            cylinderOneAt?: number;
            session?: string;
        };
        EngineLimits: {
            minimum?: components["schemas"]["Pressure"];
            maximum?: components["schemas"]["Pressure"];
            spreadPercent?: number;
            spreadPressure?: components["schemas"]["Pressure"];
        };
        EngineHistory: {
            kmSinceRings?: number;
            monthsStored?: number;
            minutesRunBeforeTest?: number;
            overheated?: boolean;
            headSkimmed?: boolean;
        };
        EngineDescription: {
            /** @enum {string} */
            fuel: "petrol" | "diesel";
            cycle?: 4 | 2;
            /** @enum {string} */
            injection?: "none" | "port" | "direct" | "mechanical-diesel" | "common-rail";
            /** @enum {string} */
            layout: "inline" | "v" | "flat";
            cylinders: number;
            firingOrder?: number[];
            banks?: number[][];
            gaskets?: number[][];
            boreMm?: number;
            strokeMm?: number;
            rodLengthMm?: number;
            compressionRatio?: number;
            intakeClosesDegAbdc?: number;
            decompressor?: boolean;
            /** @enum {string} */
            valveGear?: "overhead" | "side";
            /** @enum {string} */
            cooling?: "water" | "air";
            /** @enum {string} */
            camshaft?: "standard" | "other";
            limits?: components["schemas"]["EngineLimits"];
            hotExhaustCylinders?: number[];
            history?: components["schemas"]["EngineHistory"];
        };
        Conditions: {
            /** @enum {string} */
            engine: "hot" | "warm" | "cold";
            /** @enum {string} */
            throttle: "open" | "closed";
            /** @enum {string} */
            plugsOut: "all" | "one";
            strokes?: number;
            crankingRpm?: number;
            batteryVolts?: number;
            altitudeM?: number;
            airPressure?: components["schemas"]["AirPressure"];
            airTempC?: number;
            clearancesSet?: boolean;
            headTorqued?: boolean;
        };
        CaseGauge: {
            span: components["schemas"]["PositivePressure"];
            accuracyClass: number;
            resolution?: components["schemas"]["Pressure"];
            volumeBeforeValveMl?: number;
            /** @enum {string} */
            connection?: "screwed" | "held";
        };
        LeakageTester: {
            supply: components["schemas"]["PositivePressure"];
            restrictorMm: number;
        };
        CaseSession: {
            conditions: components["schemas"]["Conditions"];
            gauge?: components["schemas"]["CaseGauge"];
            leakageTester?: components["schemas"]["LeakageTester"];
        };
        /**
         * @example {
         *       "engine": {
         *         "fuel": "petrol",
         *         "layout": "inline",
         *         "cylinders": 4,
         *         "firingOrder": [
         *           1,
         *           3,
         *           4,
         *           2
         *         ],
         *         "boreMm": 84,
         *         "strokeMm": 89,
         *         "compressionRatio": 8.8
         *       },
         *       "conditions": {
         *         "engine": "hot",
         *         "throttle": "open",
         *         "plugsOut": "all",
         *         "strokes": 8,
         *         "batteryVolts": 12.4,
         *         "altitudeM": 12,
         *         "airTempC": 18,
         *         "clearancesSet": true,
         *         "headTorqued": true
         *       },
         *       "gauge": {
         *         "span": {
         *           "value": 300,
         *           "unit": "psi"
         *         },
         *         "accuracyClass": 1.6,
         *         "resolution": {
         *           "value": 1,
         *           "unit": "psi"
         *         }
         *       },
         *       "leakageTester": {
         *         "supply": {
         *           "value": 80,
         *           "unit": "psi"
         *         },
         *         "restrictorMm": 1.016
         *       },
         *       "readings": [
         *         {
         *           "test": "compression",
         *           "cylinder": 1,
         *           "pressure": {
         *             "value": 155,
         *             "unit": "psi"
         *           }
         *         },
         *         {
         *           "test": "compression",
         *           "cylinder": 2,
         *           "pressure": {
         *             "value": 160,
         *             "unit": "psi"
         *           }
         *         },
         *         {
         *           "test": "compression",
         *           "cylinder": 3,
         *           "pressure": {
         *             "value": 140,
         *             "unit": "psi"
         *           }
         *         },
         *         {
         *           "test": "compression",
         *           "cylinder": 4,
         *           "pressure": {
         *             "value": 145,
         *             "unit": "psi"
         *           }
         *         },
         *         {
         *           "test": "leakage",
         *           "cylinder": 3,
         *           "held": {
         *             "value": 46,
         *             "unit": "psi"
         *           },
         *           "heard": {
         *             "exhaust": 3,
         *             "intake": 0
         *           }
         *         }
         *       ]
         *     }
         */
        Case: {
            engine: components["schemas"]["EngineDescription"];
            conditions: components["schemas"]["Conditions"];
            gauge?: components["schemas"]["CaseGauge"];
            leakageTester?: components["schemas"]["LeakageTester"];
            sessions?: {
                [key: string]: components["schemas"]["CaseSession"];
            };
            readings: components["schemas"]["Reading"][];
        };
        /** @enum {string} */
        PressureUnit: "psi" | "kPa" | "bar" | "kgf/cm2";
        /** @enum {string} */
        Operation: "look-borescope" | "look-head-off" | "clearances-run-test" | "head-valves" | "guides" | "rings" | "rebore" | "soak-run-test" | "piston" | "rocker-pushrod" | "cam-tappets" | "hard-run" | "decoke" | "fuel-wash" | "gasket-retorque" | "gasket-replace" | "head-crack" | "block" | "timing" | "starter-battery" | "sticking-valve" | "plug-thread" | "rod" | "run-on" | "overhaul";
        /** @enum {string} */
        Fault: "exhaust-valve-leak" | "intake-valve-leak" | "ring-wear" | "ring-broken-or-stuck" | "piston-damage" | "valve-not-opening" | "clearance-tight" | "carbon-build-up" | "fuel-wash" | "gasket-to-coolant" | "gasket-to-outside" | "cracked-head" | "valve-sticking" | "rod-bent" | "plug-thread-leak";
        /** @enum {string} */
        Cause: "throttle-closed" | "slow-cranking" | "valve-timing" | "worn-evenly" | "gauge-error" | "none";
        ExtremeCylinder: {
            cylinder: number;
            pressure: components["schemas"]["Pressure"];
            readings: number[];
        };
        AlsoChecked: {
            /** @enum {string} */
            rule: "own-spread-percent" | "own-spread-pressure" | "one-tenth" | "three-quarters" | "fifth-below-mean" | "ten-psi" | "own-minimum" | "own-maximum";
            basis: string;
            /** @enum {string} */
            verdict: "inside" | "outside" | "undecided";
            /** @enum {string} */
            asRead: "inside" | "outside";
            probabilityInside: number;
            cylinders?: number[];
        };
        Consistency: {
            /** @description The session judged; null is the top level of the case. */
            session: string | null;
            /** @enum {string} */
            rule: "own-spread-percent" | "own-spread-pressure" | "one-tenth" | "three-quarters" | "fifth-below-mean" | "ten-psi" | "own-minimum" | "own-maximum";
            basis: string;
            limitPercent?: number;
            limitPressure?: components["schemas"]["Pressure"];
            spreadPercent: number | null;
            lowest: components["schemas"]["ExtremeCylinder"] | null;
            highest: components["schemas"]["ExtremeCylinder"] | null;
            asRead: ("inside" | "outside") | null;
            /** @enum {string} */
            verdict: "inside" | "outside" | "undecided";
            probabilityInside: number | null;
            alsoChecked: components["schemas"]["AlsoChecked"][];
        };
        ExpectedPressure: {
            low: components["schemas"]["Pressure"];
            high: components["schemas"]["Pressure"];
            basis: string;
        };
        CylinderBelief: {
            cylinder: number;
            sound: number;
            faults: {
                fault: components["schemas"]["Fault"];
                probability: number;
            }[];
            pairs?: {
                faults: [
                    components["schemas"]["Fault"],
                    components["schemas"]["Fault"]
                ];
                probability: number;
            }[];
            ignitionOrMixture?: number;
        };
        NeighbourBelief: {
            cylinders: [
                number,
                number
            ];
            /** @constant */
            fault: "gasket-between";
            probability: number;
        };
        LeakageResult: {
            reading: number;
            cylinder: number;
            percentAsRead: number | null;
            overLimit: boolean | null;
            leakAreaMm2: number | null;
            percentAtReference: number | null;
            /** @description Leak area over the median area of the other cylinders. */
            againstSisters: number | null;
            /** @description Low end of the 95 percent range of the leak area. */
            leakAreaLowMm2?: number;
            leakAreaHighMm2?: number;
            percentAtReferenceLow?: number;
            percentAtReferenceHigh?: number;
        };
        Because: {
            /** @enum {string} */
            kind: "reading" | "prior" | "together";
            readings: number[];
            cylinder?: number;
            cylinders?: [
                number,
                number
            ];
            /** @enum {string} */
            fault?: "exhaust-valve-leak" | "intake-valve-leak" | "ring-wear" | "ring-broken-or-stuck" | "piston-damage" | "valve-not-opening" | "clearance-tight" | "carbon-build-up" | "fuel-wash" | "gasket-to-coolant" | "gasket-to-outside" | "cracked-head" | "valve-sticking" | "rod-bent" | "plug-thread-leak" | "gasket-between" | "sound";
            cause?: components["schemas"]["Cause"];
            decibans: number;
            says: string;
        };
        Turns: {
            reading: number;
            cylinder?: number;
            to: components["schemas"]["Pressure"];
            leads: string;
            says: string;
        };
        SuggestedTest: {
            /** @enum {string} */
            test: "compression" | "leakage" | "plug" | "power-balance" | "vacuum" | "coolant-gas" | "borescope" | "clearance" | "valve-lift" | "cooling-pressure" | "observation" | "cranking-current";
            /** @enum {string} */
            code?: "weak-by-hand" | "locked-by-hand" | "smoke-blue-throttle" | "smoke-blue-overrun" | "smoke-white" | "smoke-black" | "breather-smoke" | "water-in-oil" | "petrol-in-oil" | "oil-in-water" | "oil-use-high" | "spits-back" | "bubbles-at-plug-thread" | "bubbles-at-joint" | "better-with-other-plug-and-lead" | "piston-low-at-top";
            wet?: boolean;
            repeat?: boolean;
            running?: boolean;
            snap?: boolean;
            rockersSlack?: number[];
            /** @enum {string} */
            first?: "warm-up" | "run-engine" | "swap-gauge" | "set-clearances" | "swap-plug-and-lead";
            cylinders?: number[];
        };
        Suggestion: {
            tests: components["schemas"]["SuggestedTest"][];
            bits: number;
            minutes: number;
            bitsPerMinute: number;
            says: string;
        };
        RepairOption: {
            operation: components["schemas"]["Operation"];
            cylinders?: number[];
            cures: number;
            expectedMinutes: number;
            says?: string;
        };
        Objection: {
            /** @enum {string} */
            code: "mixed-strokes" | "mixed-conditions" | "oil-in-diesel" | "no-sister" | "incomplete" | "over-span" | "no-tester" | "not-weighed" | "two-stroke" | "throttle-shut" | "too-few-strokes" | "speed-sag" | "gauge-not-released" | "adaptor-leaking" | "wrong-cylinder" | "wrong-unit" | "rounded" | "piston-off-top" | "check-valve-left-in" | "regulator-droop" | "control-rises" | "wet-below-dry" | "wet-too-high" | "sea-level-pressure" | "leakage-against-compression" | "repeat-disagrees";
            readings: number[];
            says: string;
            do: string;
        };
        Caution: {
            /** @enum {string} */
            code: "oil-in-diesel" | "cranking" | "petrol-mist" | "liquid-in-cylinder" | "wet-test-oil" | "diesel-spray" | "diesel-gauge" | "compressed-air" | "running-engine" | "high-tension" | "current-clamp" | "coolant-cap" | "borescope" | "strip-down";
            says: string;
        };
        Evaluation: {
            model: string;
            consistency: components["schemas"]["Consistency"];
            expected?: components["schemas"]["ExpectedPressure"];
            cylinders: components["schemas"]["CylinderBelief"][];
            neighbours: components["schemas"]["NeighbourBelief"][];
            engine: {
                cause: components["schemas"]["Cause"];
                probability: number;
            }[];
            leakage: components["schemas"]["LeakageResult"][];
            because: components["schemas"]["Because"][];
            turns?: components["schemas"]["Turns"];
            next: components["schemas"]["Suggestion"][];
            enough: {
                says: string;
            } | null;
            repairs: components["schemas"]["RepairOption"][];
            objections: components["schemas"]["Objection"][];
            cautions: components["schemas"]["Caution"][];
        };
        FieldError: {
            /** @description JSON Pointer (RFC 6901) into what was sent; "" is the whole. */
            path: string;
            expected: string;
            got?: string;
        };
        DiagnosisProblem: {
            type: string;
            title: string;
            errors: components["schemas"]["FieldError"][];
        };
        /**
         * @example {
         *       "before": {
         *         "engine": {
         *           "fuel": "petrol",
         *           "layout": "inline",
         *           "cylinders": 4,
         *           "firingOrder": [
         *             1,
         *             3,
         *             4,
         *             2
         *           ],
         *           "boreMm": 84,
         *           "strokeMm": 89,
         *           "compressionRatio": 8.8
         *         },
         *         "conditions": {
         *           "engine": "hot",
         *           "throttle": "open",
         *           "plugsOut": "all",
         *           "strokes": 8,
         *           "batteryVolts": 12.4,
         *           "altitudeM": 12,
         *           "airTempC": 18,
         *           "clearancesSet": true,
         *           "headTorqued": true
         *         },
         *         "gauge": {
         *           "span": {
         *             "value": 300,
         *             "unit": "psi"
         *           },
         *           "accuracyClass": 1.6,
         *           "resolution": {
         *             "value": 1,
         *             "unit": "psi"
         *           }
         *         },
         *         "leakageTester": {
         *           "supply": {
         *             "value": 80,
         *             "unit": "psi"
         *           },
         *           "restrictorMm": 1.016
         *         },
         *         "readings": [
         *           {
         *             "test": "compression",
         *             "cylinder": 1,
         *             "pressure": {
         *               "value": 155,
         *               "unit": "psi"
         *             }
         *           },
         *           {
         *             "test": "compression",
         *             "cylinder": 2,
         *             "pressure": {
         *               "value": 160,
         *               "unit": "psi"
         *             }
         *           },
         *           {
         *             "test": "compression",
         *             "cylinder": 3,
         *             "pressure": {
         *               "value": 140,
         *               "unit": "psi"
         *             }
         *           },
         *           {
         *             "test": "compression",
         *             "cylinder": 4,
         *             "pressure": {
         *               "value": 145,
         *               "unit": "psi"
         *             }
         *           },
         *           {
         *             "test": "leakage",
         *             "cylinder": 3,
         *             "held": {
         *               "value": 46,
         *               "unit": "psi"
         *             },
         *             "heard": {
         *               "exhaust": 3,
         *               "intake": 0
         *             }
         *           }
         *         ]
         *       },
         *       "after": {
         *         "engine": {
         *           "fuel": "petrol",
         *           "layout": "inline",
         *           "cylinders": 4,
         *           "firingOrder": [
         *             1,
         *             3,
         *             4,
         *             2
         *           ],
         *           "boreMm": 84,
         *           "strokeMm": 89,
         *           "compressionRatio": 8.8
         *         },
         *         "conditions": {
         *           "engine": "hot",
         *           "throttle": "open",
         *           "plugsOut": "all",
         *           "strokes": 8,
         *           "batteryVolts": 12.4,
         *           "altitudeM": 12,
         *           "airTempC": 18,
         *           "clearancesSet": true,
         *           "headTorqued": true
         *         },
         *         "gauge": {
         *           "span": {
         *             "value": 300,
         *             "unit": "psi"
         *           },
         *           "accuracyClass": 1.6,
         *           "resolution": {
         *             "value": 1,
         *             "unit": "psi"
         *           }
         *         },
         *         "leakageTester": {
         *           "supply": {
         *             "value": 80,
         *             "unit": "psi"
         *           },
         *           "restrictorMm": 1.016
         *         },
         *         "readings": [
         *           {
         *             "test": "compression",
         *             "cylinder": 1,
         *             "pressure": {
         *               "value": 158,
         *               "unit": "psi"
         *             }
         *           },
         *           {
         *             "test": "compression",
         *             "cylinder": 2,
         *             "pressure": {
         *               "value": 160,
         *               "unit": "psi"
         *             }
         *           },
         *           {
         *             "test": "compression",
         *             "cylinder": 3,
         *             "pressure": {
         *               "value": 157,
         *               "unit": "psi"
         *             }
         *           },
         *           {
         *             "test": "compression",
         *             "cylinder": 4,
         *             "pressure": {
         *               "value": 156,
         *               "unit": "psi"
         *             }
         *           }
         *         ]
         *       },
         *       "work": [
         *         "head-valves"
         *       ]
         *     }
         */
        ComparisonRequest: {
            before: components["schemas"]["Case"];
            after: components["schemas"]["Case"];
            work?: components["schemas"]["Operation"][];
        };
        CylinderChange: {
            cylinder: number;
            before: components["schemas"]["Pressure"] | null;
            after: components["schemas"]["Pressure"] | null;
            change: number | null;
            improved: number | null;
            unchanged: number | null;
            worse: number | null;
        };
        SpreadChange: {
            before: number | null;
            after: number | null;
            change: number | null;
            improved: number | null;
            unchanged: number | null;
            worse: number | null;
        };
        Cured: {
            cylinder: number;
            fault: components["schemas"]["Fault"];
            before: number;
            after: number;
            cured: number;
        };
        NewHarm: {
            cylinder: number;
            probability: number;
            says: string;
        };
        ComparisonObjection: {
            /** @enum {string} */
            code: "mixed-strokes" | "mixed-conditions" | "oil-in-diesel" | "no-sister" | "incomplete" | "over-span" | "no-tester" | "not-weighed" | "two-stroke" | "throttle-shut" | "too-few-strokes" | "speed-sag" | "gauge-not-released" | "adaptor-leaking" | "wrong-cylinder" | "wrong-unit" | "rounded" | "piston-off-top" | "check-valve-left-in" | "regulator-droop" | "control-rises" | "wet-below-dry" | "wet-too-high" | "sea-level-pressure" | "leakage-against-compression" | "repeat-disagrees";
            /** @enum {string} */
            in: "before" | "after" | "both";
            readings: number[];
            says: string;
            do: string;
        };
        Comparison: {
            model: string;
            comparable: boolean;
            cylinders: components["schemas"]["CylinderChange"][];
            spread: components["schemas"]["SpreadChange"];
            cured: components["schemas"]["Cured"][];
            newHarm: components["schemas"]["NewHarm"][];
            objections: components["schemas"]["ComparisonObjection"][];
        };
        PersonRef: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            name: string;
        };
        /** @enum {string} */
        Role: "technician" | "front-desk" | "manager" | "owner";
        /** @enum {string} */
        Scope: "jobs:read" | "jobs:write" | "engines:read" | "readings:write" | "retests:write" | "evaluate" | "events:read";
        RoleHeld: {
            garage: string | null;
            role: components["schemas"]["Role"];
            approvalLimitMinor?: number | null;
        };
        /**
         * @example {
         *       "email": "ada@example.test",
         *       "password": "five old spanners"
         *     }
         */
        SignIn: {
            /** Format: email */
            email: string;
            password: string;
            oneTimeCode?: string;
        };
        Tokens: {
            accessToken: string;
            /** @constant */
            tokenType: "Bearer";
            expiresInSeconds: number;
            refreshToken?: string;
        };
        /**
         * @example {
         *       "refreshToken": "ebref-example"
         *     }
         */
        Refresh: {
            refreshToken?: string;
        };
        /**
         * @example {
         *       "enrolmentCode": "QUAY-7T4K"
         *     }
         */
        Enrol: {
            enrolmentCode: string;
        };
        Enrolled: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            tablet: string;
            name: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            garage: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            bay: string;
            tabletToken: string;
        };
        /**
         * @example {
         *       "person": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b",
         *       "pin": "4821"
         *     }
         */
        TakeOver: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            person: string;
            /** @description four to eight digits */
            pin: string;
        };
        /**
         * @example {
         *       "grant_type": "client_credentials",
         *       "scope": "jobs:read evaluate",
         *       "client_id": "app-example",
         *       "client_secret": "ebapp-example"
         *     }
         */
        TokenRequest: {
            /** @constant */
            grant_type: "client_credentials";
            scope?: string;
            client_id?: string;
            client_secret?: string;
        };
        TokenAnswer: {
            access_token: string;
            /** @constant */
            token_type: "Bearer";
            expires_in: number;
            scope: string;
        };
        /**
         * @example {
         *       "link": "eblink-example",
         *       "name": "Olga Ownfield",
         *       "email": "olga@example.test",
         *       "password": "five old spanners"
         *     }
         */
        OwnerSetup: {
            link: string;
            name: string;
            /** Format: email */
            email: string;
            /** @description at least 12 characters */
            password: string;
        };
        Me: {
            /** @enum {string} */
            kind: "person" | "tablet" | "app";
            person: components["schemas"]["PersonRef"] | null;
            roles: components["schemas"]["RoleHeld"][];
            garages: {
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                id: string;
                name: string;
                timeZone: string;
                currency: string;
                pressureUnit: components["schemas"]["PressureUnit"];
                /** @enum {string} */
                locale: "en" | "de" | "es";
            }[];
            tablet: {
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                id: string;
                name: string;
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                garage: string;
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                bay: string;
            } | null;
            scopes: components["schemas"]["Scope"][];
            /** @enum {string} */
            locale: "en" | "de" | "es";
            pressureUnit: components["schemas"]["PressureUnit"] | null;
            deputyFor: {
                manager: components["schemas"]["PersonRef"];
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                garage: string;
                /**
                 * Format: date-time
                 * @description instant, RFC 3339
                 * @example 2026-05-06T10:20:00.000Z
                 */
                until: string;
                approvalLimitMinor: number | null;
            }[];
        };
        Tablet: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            garage: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            bay: string;
            name: string;
            enrolledAt: string | null;
            revokedAt: string | null;
        };
        /**
         * @example {
         *       "bay": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b",
         *       "name": "Tablet on the lift"
         *     }
         */
        NewTablet: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            bay: string;
            name: string;
        };
        TabletMade: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            garage: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            bay: string;
            name: string;
            enrolledAt: string | null;
            revokedAt: string | null;
            enrolmentCode: string;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            expiresAt: string;
        };
        OutsideApp: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            name: string;
            clientId: string;
            scopes: components["schemas"]["Scope"][];
            garages: string[];
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            createdAt: string;
            revokedAt: string | null;
        };
        /**
         * @example {
         *       "name": "Ledger",
         *       "scopes": [
         *         "jobs:read"
         *       ],
         *       "garages": [
         *         "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b"
         *       ]
         *     }
         */
        NewOutsideApp: {
            name: string;
            scopes: components["schemas"]["Scope"][];
            /** @default [] */
            garages: string[];
        };
        OutsideAppMade: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            name: string;
            clientId: string;
            scopes: components["schemas"]["Scope"][];
            garages: string[];
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            createdAt: string;
            revokedAt: string | null;
            clientSecret: string;
        };
        Person: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            name: string;
            email: string | null;
            hasPin: boolean;
            roles: components["schemas"]["RoleHeld"][];
            locale: ("en" | "de" | "es") | null;
            pressureUnit: components["schemas"]["PressureUnit"] | null;
            leftAt: string | null;
            version: number;
        };
        /**
         * @example {
         *       "name": "Ned Torkham",
         *       "email": "ned@example.test",
         *       "password": "five old spanners",
         *       "pin": "4821",
         *       "roles": [
         *         {
         *           "garage": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b",
         *           "role": "manager",
         *           "approvalLimitMinor": 150000
         *         }
         *       ],
         *       "locale": "en",
         *       "pressureUnit": "psi"
         *     }
         */
        NewPerson: {
            name: string;
            /** Format: email */
            email?: string;
            /** @description at least 12 characters */
            password?: string;
            /** @description four to eight digits */
            pin?: string;
            roles: components["schemas"]["RoleHeld"][];
            /** @enum {string} */
            locale?: "en" | "de" | "es";
            pressureUnit?: components["schemas"]["PressureUnit"];
        };
        /**
         * @example {
         *       "name": "Ned Torkham",
         *       "email": "ned@example.test",
         *       "password": "five old spanners",
         *       "pin": "4821",
         *       "roles": [
         *         {
         *           "garage": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b",
         *           "role": "technician"
         *         }
         *       ],
         *       "locale": "en",
         *       "pressureUnit": "psi",
         *       "left": false
         *     }
         */
        PersonEdit: {
            name?: string;
            email?: string | null;
            /** @description at least 12 characters */
            password?: string;
            /** @description four to eight digits */
            pin?: string;
            roles?: components["schemas"]["RoleHeld"][];
            locale?: ("en" | "de" | "es") | null;
            pressureUnit?: components["schemas"]["PressureUnit"] | null;
            left?: boolean;
        };
        /**
         * @example {
         *       "locale": "de",
         *       "pressureUnit": "bar"
         *     }
         */
        MyPreferences: {
            locale?: ("en" | "de" | "es") | null;
            pressureUnit?: components["schemas"]["PressureUnit"] | null;
        };
        Deputy: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            garage: string;
            manager: components["schemas"]["PersonRef"];
            deputy: components["schemas"]["PersonRef"];
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            from: string;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            until: string;
            revokedAt: string | null;
        };
        /**
         * @example {
         *       "manager": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b",
         *       "deputy": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4c",
         *       "from": "2026-05-06T10:20:00.000Z",
         *       "until": "2026-05-20T10:20:00.000Z"
         *     }
         */
        NewDeputy: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            manager?: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            deputy: string;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            from?: string;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            until: string;
        };
        AuditEntry: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            at: string;
            garage: string | null;
            actor: {
                kind: string;
                id: string;
                name: string | null;
            };
            action: string;
            subject: unknown;
        };
        Garage: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            name: string;
            /** @description first part of the job codes: "K" gives K 27 */
            codeLetter: string;
            timeZone: string;
            /**
             * @description ISO 4217 currency code
             * @example EUR
             */
            currency: string;
            pressureUnit: components["schemas"]["PressureUnit"];
            elevationM: number | null;
            /** @enum {string} */
            locale: "en" | "de" | "es";
            /** @description money in minor units of the currency named beside it */
            labourRateMinor: number;
            taxBasisPoints: number;
            pricesIncludeTax: boolean;
            toleranceBasisPoints: number;
            version: number;
        };
        /**
         * @example {
         *       "name": "Quay Street Engines",
         *       "codeLetter": "Q",
         *       "timeZone": "Europe/Lisbon",
         *       "currency": "EUR",
         *       "pressureUnit": "psi",
         *       "elevationM": 12,
         *       "locale": "en",
         *       "labourRateMinor": 7800,
         *       "taxBasisPoints": 2300,
         *       "pricesIncludeTax": false,
         *       "toleranceBasisPoints": 0
         *     }
         */
        NewGarage: {
            name: string;
            /** @description first part of the job codes: "K" gives K 27 */
            codeLetter: string;
            timeZone: string;
            /**
             * @description ISO 4217 currency code
             * @example EUR
             */
            currency: string;
            pressureUnit: components["schemas"]["PressureUnit"];
            /** @default null */
            elevationM: number | null;
            /**
             * @default en
             * @enum {string}
             */
            locale: "en" | "de" | "es";
            /** @description money in minor units of the currency named beside it */
            labourRateMinor: number;
            taxBasisPoints: number;
            /** @default false */
            pricesIncludeTax: boolean;
            /** @default 0 */
            toleranceBasisPoints: number;
        };
        /**
         * @example {
         *       "name": "Quay Street Engines",
         *       "codeLetter": "Q",
         *       "timeZone": "Europe/Lisbon",
         *       "currency": "EUR",
         *       "pressureUnit": "psi",
         *       "elevationM": 12,
         *       "locale": "en",
         *       "labourRateMinor": 7800,
         *       "taxBasisPoints": 2300,
         *       "pricesIncludeTax": false,
         *       "toleranceBasisPoints": 0
         *     }
         */
        GarageEdit: {
            name?: string;
            /** @description first part of the job codes: "K" gives K 27 */
            codeLetter?: string;
            timeZone?: string;
            /**
             * @description ISO 4217 currency code
             * @example EUR
             */
            currency?: string;
            pressureUnit?: components["schemas"]["PressureUnit"];
            elevationM?: number | null;
            /** @enum {string} */
            locale?: "en" | "de" | "es";
            /** @description money in minor units of the currency named beside it */
            labourRateMinor?: number;
            taxBasisPoints?: number;
            pricesIncludeTax?: boolean;
            toleranceBasisPoints?: number;
        };
        Bay: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            garage: string;
            name: string;
            position: number;
            closedAt: string | null;
            version: number;
        };
        /**
         * @example {
         *       "name": "Bay 3",
         *       "position": 3
         *     }
         */
        NewBay: {
            name: string;
            position: number;
        };
        /**
         * @example {
         *       "name": "Bay 3",
         *       "position": 3,
         *       "closed": false
         *     }
         */
        BayEdit: {
            name?: string;
            position?: number;
            closed?: boolean;
        };
        Gauge: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            garage: string;
            name: string;
            /** @enum {string} */
            kind: "compression" | "leakage" | "vacuum";
            specification: components["schemas"]["CaseGauge"] | components["schemas"]["LeakageTester"];
            checkDue: string | null;
            retiredAt: string | null;
            version: number;
        };
        /**
         * @example {
         *       "kind": "compression",
         *       "name": "Screw-in gauge",
         *       "specification": {
         *         "span": {
         *           "value": 300,
         *           "unit": "psi"
         *         },
         *         "accuracyClass": 1.6,
         *         "resolution": {
         *           "value": 1,
         *           "unit": "psi"
         *         }
         *       },
         *       "checkDue": "2026-06-20"
         *     }
         */
        NewGauge: {
            /** @enum {string} */
            kind: "compression" | "vacuum";
            name: string;
            specification: components["schemas"]["CaseGauge"];
            /** @default null */
            checkDue: string | null;
        } | {
            /** @constant */
            kind: "leakage";
            name: string;
            specification: components["schemas"]["LeakageTester"];
            /** @default null */
            checkDue: string | null;
        };
        /**
         * @example {
         *       "name": "Screw-in gauge",
         *       "specification": {
         *         "span": {
         *           "value": 300,
         *           "unit": "psi"
         *         },
         *         "accuracyClass": 1.6,
         *         "resolution": {
         *           "value": 1,
         *           "unit": "psi"
         *         }
         *       },
         *       "checkDue": "2026-06-20",
         *       "retired": false
         *     }
         */
        GaugeEdit: {
            name?: string;
            specification?: components["schemas"]["CaseGauge"] | components["schemas"]["LeakageTester"];
            checkDue?: string | null;
            retired?: boolean;
        };
        CatalogueItem: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            garage: string;
            /** @enum {string} */
            kind: "labour" | "part";
            operation: components["schemas"]["Operation"] | null;
            text: string;
            minutes: number | null;
            unitPriceMinor: number | null;
            taxBasisPoints: number;
            retiredAt: string | null;
            version: number;
        };
        /**
         * @example {
         *       "kind": "labour",
         *       "operation": "head-valves",
         *       "text": "Head off, valve and seat",
         *       "minutes": 540,
         *       "unitPriceMinor": 0,
         *       "taxBasisPoints": 2300
         *     }
         */
        NewCatalogueItem: {
            /** @enum {string} */
            kind: "labour" | "part";
            operation: components["schemas"]["Operation"] | null;
            text: string;
            minutes: number | null;
            unitPriceMinor: number | null;
            taxBasisPoints: number;
        };
        /**
         * @example {
         *       "kind": "labour",
         *       "operation": "head-valves",
         *       "text": "Head off, valve and seat",
         *       "minutes": 540,
         *       "unitPriceMinor": 0,
         *       "taxBasisPoints": 2300,
         *       "retired": false
         *     }
         */
        CatalogueItemEdit: {
            /** @enum {string} */
            kind?: "labour" | "part";
            operation?: components["schemas"]["Operation"] | null;
            text?: string;
            minutes?: number | null;
            unitPriceMinor?: number | null;
            taxBasisPoints?: number;
            retired?: boolean;
        };
        Customer: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            garage: string;
            name: string;
            phone: string | null;
            email: string | null;
            address: string | null;
            note: string | null;
            erasedAt: string | null;
            version: number;
        };
        /**
         * @example {
         *       "name": "Ada Wrenford",
         *       "phone": "+351 555 0142",
         *       "email": "ada@example.test",
         *       "address": "3 Hill Steps",
         *       "note": "Rings after six"
         *     }
         */
        NewCustomer: {
            name: string;
            /** @default null */
            phone: string | null;
            /** @default null */
            email: string | null;
            /** @default null */
            address: string | null;
            /** @default null */
            note: string | null;
        };
        /**
         * @example {
         *       "name": "Ada Wrenford",
         *       "phone": "+351 555 0142",
         *       "email": "ada@example.test",
         *       "address": "3 Hill Steps",
         *       "note": "Rings after six"
         *     }
         */
        CustomerEdit: {
            name?: string;
            phone?: string | null;
            email?: string | null;
            address?: string | null;
            note?: string | null;
        };
        Vehicle: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            garage: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            customer: string;
            /**
             * @description registration plate as written
             * @example FX 204 B
             */
            plate: string;
            /** @example grey estate */
            description: string;
            year: number | null;
            note: string | null;
            engine: string | null;
            version: number;
        };
        /**
         * @example {
         *       "customer": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b",
         *       "plate": "QX 27 NB",
         *       "description": "grey estate",
         *       "year": 1974,
         *       "note": "Choke by hand"
         *     }
         */
        NewVehicle: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            customer: string;
            /**
             * @description registration plate as written
             * @example FX 204 B
             */
            plate: string;
            /** @example grey estate */
            description: string;
            /** @default null */
            year: number | null;
            /** @default null */
            note: string | null;
        };
        /**
         * @example {
         *       "customer": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b",
         *       "plate": "QX 27 NB",
         *       "description": "grey estate",
         *       "year": 1974,
         *       "note": "Choke by hand"
         *     }
         */
        VehicleEdit: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            customer?: string;
            /**
             * @description registration plate as written
             * @example FX 204 B
             */
            plate?: string;
            /** @example grey estate */
            description?: string;
            year?: number | null;
            note?: string | null;
        };
        EngineSpecification: {
            /** @enum {string} */
            fuel: "petrol" | "diesel";
            cycle?: 4 | 2;
            /** @enum {string} */
            injection?: "none" | "port" | "direct" | "mechanical-diesel" | "common-rail";
            /** @enum {string} */
            layout: "inline" | "v" | "flat";
            cylinders: number;
            firingOrder?: number[];
            banks?: number[][];
            gaskets?: number[][];
            boreMm?: number;
            strokeMm?: number;
            rodLengthMm?: number;
            compressionRatio?: number;
            intakeClosesDegAbdc?: number;
            decompressor?: boolean;
            /** @enum {string} */
            valveGear?: "overhead" | "side";
            /** @enum {string} */
            cooling?: "water" | "air";
            /** @enum {string} */
            camshaft?: "standard" | "other";
            limits?: components["schemas"]["EngineLimits"];
            hotExhaustCylinders?: number[];
        };
        EngineOwnValues: {
            /** @enum {string} */
            fuel?: "petrol" | "diesel";
            cycle?: 4 | 2;
            /** @enum {string} */
            injection?: "none" | "port" | "direct" | "mechanical-diesel" | "common-rail";
            /** @enum {string} */
            layout?: "inline" | "v" | "flat";
            cylinders?: number;
            firingOrder?: number[];
            banks?: number[][];
            gaskets?: number[][];
            boreMm?: number;
            strokeMm?: number;
            rodLengthMm?: number;
            compressionRatio?: number;
            intakeClosesDegAbdc?: number;
            decompressor?: boolean;
            /** @enum {string} */
            valveGear?: "overhead" | "side";
            /** @enum {string} */
            cooling?: "water" | "air";
            /** @enum {string} */
            camshaft?: "standard" | "other";
            limits?: components["schemas"]["EngineLimits"];
            hotExhaustCylinders?: number[];
        };
        LeadPlan: {
            /** @enum {string} */
            rotor: "clockwise" | "anticlockwise";
            leadOneAtOClock: number;
        };
        EngineFamily: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            name: string;
            specification: components["schemas"]["EngineSpecification"];
            /** @description field of the specification -> where its value comes from */
            basis: {
                [key: string]: string;
            };
            leads: components["schemas"]["LeadPlan"] | null;
            version: number;
        };
        /**
         * @example {
         *       "name": "Iron four, 1.8",
         *       "specification": {
         *         "fuel": "petrol",
         *         "layout": "inline",
         *         "cylinders": 4,
         *         "firingOrder": [
         *           1,
         *           3,
         *           4,
         *           2
         *         ],
         *         "boreMm": 84,
         *         "strokeMm": 89,
         *         "compressionRatio": 8.8,
         *         "limits": {
         *           "minimum": {
         *             "value": 120,
         *             "unit": "psi"
         *           },
         *           "spreadPercent": 10
         *         }
         *       },
         *       "basis": {
         *         "limits": "workshop manual, page 12"
         *       },
         *       "leads": {
         *         "rotor": "clockwise",
         *         "leadOneAtOClock": 5
         *       }
         *     }
         */
        NewEngineFamily: {
            name: string;
            specification: components["schemas"]["EngineSpecification"];
            /** @description field of the specification -> where its value comes from */
            basis: {
                [key: string]: string;
            };
            /** @default null */
            leads: components["schemas"]["LeadPlan"] | null;
        };
        /**
         * @example {
         *       "name": "Iron four, 1.8",
         *       "specification": {
         *         "fuel": "petrol",
         *         "layout": "inline",
         *         "cylinders": 4,
         *         "firingOrder": [
         *           1,
         *           3,
         *           4,
         *           2
         *         ],
         *         "boreMm": 84,
         *         "strokeMm": 89,
         *         "compressionRatio": 8.8,
         *         "limits": {
         *           "minimum": {
         *             "value": 120,
         *             "unit": "psi"
         *           },
         *           "spreadPercent": 10
         *         }
         *       },
         *       "basis": {
         *         "limits": "workshop manual, page 12"
         *       },
         *       "leads": {
         *         "rotor": "clockwise",
         *         "leadOneAtOClock": 5
         *       }
         *     }
         */
        EngineFamilyEdit: {
            name?: string;
            specification?: components["schemas"]["EngineSpecification"];
            /** @description field of the specification -> where its value comes from */
            basis?: {
                [key: string]: string;
            };
            leads?: components["schemas"]["LeadPlan"] | null;
        };
        Engine: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            family: {
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                id: string;
                name: string;
            } | null;
            description: string;
            stampedNumber: string | null;
            specification: components["schemas"]["EngineSpecification"];
            ownValues: components["schemas"]["EngineOwnValues"];
            history: components["schemas"]["EngineHistory"];
            leads: components["schemas"]["LeadPlan"] | null;
            fittedIn: {
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                fitting: string;
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                vehicle: string;
                plate: string | null;
                /**
                 * Format: date-time
                 * @description instant, RFC 3339
                 * @example 2026-05-06T10:20:00.000Z
                 */
                from: string;
            } | null;
            version: number;
        };
        /**
         * @example {
         *       "family": null,
         *       "description": "iron four of the grey estate",
         *       "stampedNumber": "IF-20417",
         *       "ownValues": {
         *         "fuel": "petrol",
         *         "layout": "inline",
         *         "cylinders": 4,
         *         "firingOrder": [
         *           1,
         *           3,
         *           4,
         *           2
         *         ],
         *         "boreMm": 84,
         *         "strokeMm": 89,
         *         "compressionRatio": 8.8,
         *         "limits": {
         *           "minimum": {
         *             "value": 120,
         *             "unit": "psi"
         *           },
         *           "spreadPercent": 10
         *         }
         *       },
         *       "history": {
         *         "kmSinceRings": 40000,
         *         "overheated": false
         *       }
         *     }
         */
        NewEngine: {
            /** @default null */
            family: string | null;
            description: string;
            /** @default null */
            stampedNumber: string | null;
            /** @default {} */
            ownValues: components["schemas"]["EngineOwnValues"];
            /** @default {} */
            history: components["schemas"]["EngineHistory"];
        };
        /**
         * @example {
         *       "description": "iron four of the grey estate",
         *       "stampedNumber": "IF-20417",
         *       "ownValues": {
         *         "fuel": "petrol",
         *         "layout": "inline",
         *         "cylinders": 4,
         *         "firingOrder": [
         *           1,
         *           3,
         *           4,
         *           2
         *         ],
         *         "boreMm": 84,
         *         "strokeMm": 89,
         *         "compressionRatio": 8.8,
         *         "limits": {
         *           "minimum": {
         *             "value": 120,
         *             "unit": "psi"
         *           },
         *           "spreadPercent": 10
         *         }
         *       },
         *       "history": {
         *         "kmSinceRings": 40000,
         *         "overheated": false
         *       }
         *     }
         */
        EngineEdit: {
            family?: string | null;
            description?: string;
            stampedNumber?: string | null;
            ownValues?: components["schemas"]["EngineOwnValues"];
            history?: components["schemas"]["EngineHistory"];
        };
        Fitting: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            engine: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            vehicle: string;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            from: string;
            until: string | null;
            odometerKm: number | null;
        };
        /**
         * @example {
         *       "vehicle": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b",
         *       "from": "2026-05-06T10:20:00.000Z",
         *       "odometerKm": 120000
         *     }
         */
        NewFitting: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            vehicle: string;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            from?: string;
            /** @default null */
            odometerKm: number | null;
        };
        /**
         * @example {
         *       "until": "2026-05-06T10:20:00.000Z"
         *     }
         */
        Removal: {
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            until?: string;
        };
        /**
         * @example {
         *       "kind": "rebuilt",
         *       "at": "2026-05-06T10:20:00.000Z",
         *       "text": "New rings and bearings"
         *     }
         */
        NewEngineEvent: {
            /** @enum {string} */
            kind: "rebuilt" | "head-off" | "note";
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            at?: string;
            text: string;
        };
        EngineEvent: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            engine: string;
            /** @enum {string} */
            kind: "rebuilt" | "head-off" | "note";
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            at: string;
            text: string;
        };
        EngineHistoryEntry: {
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            at: string;
            /** @enum {string} */
            kind: "fitted" | "removed" | "job" | "session" | "finding";
            garage: string;
            plate: string | null;
            job: string | null;
            code: string | null;
            text: string | null;
        };
        /**
         * @example {
         *       "same": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4c",
         *       "reason": "Booked in twice under two plates"
         *     }
         */
        SameEngine: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            same: string;
            reason: string;
        };
        /** @enum {string} */
        JobState: "handed-over" | "cancelled" | "ready" | "waiting-for-parts" | "waiting-for-manager" | "waiting-for-customer" | "retest-due" | "in-repair" | "approved" | "testing" | "in-bay" | "booked";
        Standing: {
            state: components["schemas"]["JobState"];
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            since: string;
            /** @enum {string} */
            waitsFor: "manager" | "customer" | "parts" | "technician" | "front-desk" | "nobody";
            /** @description name of the person or thing waited on, where one is known */
            waitsOn: string | null;
            /** @description next call, arrival of parts, or the promise to the customer */
            until: string | null;
            beside: ("draft" | "sent-back" | "refused" | "sent" | "declined" | "nothing-found" | "release-passed" | "release-failed" | "release-waived" | "unplaced-readings" | "excess-needs-permission")[];
        };
        PriorWork: {
            headTorqued?: boolean;
            clearancesSet?: boolean;
            ringsNew?: boolean;
            gasketNew?: boolean;
            valvesGround?: boolean;
            overheated?: boolean;
            monthsStored?: number;
            note?: string;
        };
        JobSummary: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            garage: string;
            /** @example K 27 */
            code: string;
            plate: string;
            /** @description the vehicle in a few words */
            vehicle: string;
            customer: string;
            complaint: string;
            bay: {
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                id: string;
                name: string;
            } | null;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            engine: string;
            cylinders: number;
            standing: components["schemas"]["Standing"];
            promisedAt: string | null;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            bookedAt: string;
        };
        Contact: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /** @enum {string} */
            kind: "call" | "message" | "visit" | "note";
            text: string;
            nextAt: string | null;
            by: components["schemas"]["PersonRef"] | null;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            at: string;
        };
        /**
         * @example {
         *       "kind": "call",
         *       "text": "Will think it over",
         *       "nextAt": "2026-05-06T10:20:00.000Z"
         *     }
         */
        NewContact: {
            /** @enum {string} */
            kind: "call" | "message" | "visit" | "note";
            text: string;
            /** @default null */
            nextAt: string | null;
        };
        PartsOrder: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            text: string;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            orderedAt: string;
            orderedBy: components["schemas"]["PersonRef"] | null;
            expectedAt: string | null;
            arrivedAt: string | null;
            arrivedBy: components["schemas"]["PersonRef"] | null;
        };
        /**
         * @example {
         *       "text": "Exhaust valve, one",
         *       "expectedAt": "2026-05-06T10:20:00.000Z"
         *     }
         */
        NewPartsOrder: {
            text: string;
            /** @default null */
            expectedAt: string | null;
        };
        Job: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            garage: string;
            /** @example K 27 */
            code: string;
            plate: string;
            /** @description the vehicle in a few words */
            vehicle: string;
            customer: string;
            complaint: string;
            bay: {
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                id: string;
                name: string;
            } | null;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            engine: string;
            cylinders: number;
            standing: components["schemas"]["Standing"];
            promisedAt: string | null;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            bookedAt: string;
            /** @description null for who may not see it */
            customerRecord: components["schemas"]["Customer"] | null;
            vehicleRecord: components["schemas"]["Vehicle"];
            engineRecord: components["schemas"]["Engine"];
            odometerKm: number | null;
            priorWork: components["schemas"]["PriorWork"];
            comeBackOf: string | null;
            bookedBy: components["schemas"]["PersonRef"] | null;
            contacts: components["schemas"]["Contact"][];
            parts: components["schemas"]["PartsOrder"][];
            /** @description what the customer has permitted so far */
            permitted: {
                /** @description money in minor units of the currency named beside it */
                amountMinor: number;
                /**
                 * @description ISO 4217 currency code
                 * @example EUR
                 */
                currency: string;
            } | null;
            cancelReason: string | null;
            handedOverAt: string | null;
            version: number;
        };
        /**
         * @example {
         *       "customer": {
         *         "name": "Ada Wrenford",
         *         "phone": "+351 555 0142",
         *         "email": "ada@example.test",
         *         "address": "3 Hill Steps",
         *         "note": "Rings after six"
         *       },
         *       "vehicle": {
         *         "plate": "QX 27 NB",
         *         "description": "grey estate",
         *         "year": 1974
         *       },
         *       "engine": {
         *         "description": "iron four",
         *         "ownValues": {
         *           "fuel": "petrol",
         *           "layout": "inline",
         *           "cylinders": 4,
         *           "firingOrder": [
         *             1,
         *             3,
         *             4,
         *             2
         *           ],
         *           "boreMm": 84,
         *           "strokeMm": 89,
         *           "compressionRatio": 8.8,
         *           "limits": {
         *             "minimum": {
         *               "value": 120,
         *               "unit": "psi"
         *             },
         *             "spreadPercent": 10
         *           }
         *         }
         *       },
         *       "complaint": "Shakes at idle, down on power",
         *       "odometerKm": 182400,
         *       "priorWork": {
         *         "headTorqued": true,
         *         "clearancesSet": false,
         *         "ringsNew": false,
         *         "gasketNew": true,
         *         "valvesGround": false,
         *         "overheated": false,
         *         "monthsStored": 3,
         *         "note": "Gasket done last year"
         *       },
         *       "promisedAt": "2026-05-06T10:20:00.000Z",
         *       "bay": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b",
         *       "comeBackOf": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4c",
         *       "fulfils": [
         *         "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b"
         *       ]
         *     }
         */
        NewJob: {
            customer: string | components["schemas"]["NewCustomer"];
            vehicle: string | {
                /**
                 * @description registration plate as written
                 * @example FX 204 B
                 */
                plate: string;
                /** @example grey estate */
                description: string;
                /** @default null */
                year: number | null;
                /** @default null */
                note: string | null;
            };
            engine?: string | components["schemas"]["NewEngine"];
            complaint: string;
            /** @default null */
            odometerKm: number | null;
            /** @default {} */
            priorWork: components["schemas"]["PriorWork"];
            /** @default null */
            promisedAt: string | null;
            /** @default null */
            bay: string | null;
            /** @default null */
            comeBackOf: string | null;
            /**
             * @description follow-up retests that this visit is for
             * @default []
             */
            fulfils: string[];
        };
        /**
         * @example {
         *       "complaint": "Shakes at idle",
         *       "odometerKm": 182410,
         *       "priorWork": {
         *         "headTorqued": true,
         *         "clearancesSet": false,
         *         "ringsNew": false,
         *         "gasketNew": true,
         *         "valvesGround": false,
         *         "overheated": false,
         *         "monthsStored": 3,
         *         "note": "Gasket done last year"
         *       },
         *       "promisedAt": "2026-05-06T10:20:00.000Z"
         *     }
         */
        JobEdit: {
            complaint?: string;
            odometerKm?: number | null;
            priorWork?: components["schemas"]["PriorWork"];
            promisedAt?: string | null;
        };
        /**
         * @example {
         *       "bay": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b"
         *     }
         */
        BayPlacement: {
            bay: string | null;
        };
        /**
         * @example {
         *       "reason": "Sold as it stands"
         *     }
         */
        Cancellation: {
            reason: string;
        };
        /**
         * @example {
         *       "note": "Even and tight on all four"
         *     }
         */
        TestingClosed: {
            note?: string;
        };
        /**
         * @example {
         *       "odometerKm": 182420,
         *       "note": "Mind the first miles",
         *       "followUps": [
         *         {
         *           "reason": "Head torqued after the first 1000 km",
         *           "latest": "2026-06-20",
         *           "odometerKm": 183400,
         *           "event": "first service"
         *         }
         *       ]
         *     }
         */
        HandOver: {
            /** @default null */
            odometerKm: number | null;
            note?: string;
            /** @default [] */
            followUps: {
                reason: string;
                /** @default null */
                latest: string | null;
                /** @default null */
                odometerKm: number | null;
                /** @default null */
                event: string | null;
            }[];
        };
        Floor: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            garage: string;
            name: string;
            bays: {
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                id: string;
                name: string;
                job: components["schemas"]["JobSummary"] | null;
            }[];
            /** @description open jobs in no bay and in none of the lists */
            elsewhere: components["schemas"]["JobSummary"][];
            waitsForDecision: components["schemas"]["JobSummary"][];
            retestsDue: {
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                retest: string;
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                job: string;
                code: string;
                plate: string;
                /** @enum {string} */
                kind: "release" | "follow-up";
                reason: string;
                due: string | null;
                overdueDays: number | null;
                bookedFor: string | null;
            }[];
            ready: components["schemas"]["JobSummary"][];
        };
        SearchHit: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            garage: string;
            /** @example K 27 */
            code: string;
            plate: string;
            /** @description the vehicle in a few words */
            vehicle: string;
            customer: string;
            complaint: string;
            bay: {
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                id: string;
                name: string;
            } | null;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            engine: string;
            cylinders: number;
            standing: components["schemas"]["Standing"];
            promisedAt: string | null;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            bookedAt: string;
            /** @enum {string} */
            matched: "code" | "plate" | "customer" | "phone";
        };
        /** @enum {string} */
        SessionPurpose: "test" | "release" | "follow-up";
        /**
         * @example {
         *       "reading": {
         *         "test": "compression",
         *         "cylinder": 3,
         *         "pressure": {
         *           "value": 140,
         *           "unit": "psi"
         *         },
         *         "firstStroke": {
         *           "value": 60,
         *           "unit": "psi"
         *         },
         *         "strokeCount": 8,
         *         "seq": 3
         *       },
         *       "takenAt": "2026-05-06T10:20:00.000Z"
         *     }
         */
        ReadingPut: {
            reading?: components["schemas"]["EnteredReading"];
            /**
             * Format: date-time
             * @description the tablet's clock
             * @example 2026-05-06T10:20:00.000Z
             */
            takenAt: string;
            /**
             * Format: uuid
             * @description person who took it, where that is not who sends it
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            takenBy?: string;
            /** @constant */
            offline?: true;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            replaces?: string;
            /** @constant */
            withdrawn?: true;
            reason?: string;
        };
        ReadingKept: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            receivedAt: string;
            /** @enum {string} */
            state: "placed" | "unplaced";
        };
        StoredReading: {
            /**
             * Format: uuid
             * @description identifier made by the client, a UUID version 7
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            session: string;
            reading: components["schemas"]["EnteredReading"] | null;
            /** @enum {string} */
            state: "placed" | "unplaced";
            current: boolean;
            replaces: string | null;
            replacedBy: string | null;
            withdrawn: boolean;
            reason: string | null;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            takenAt: string;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            receivedAt: string;
            takenBy: components["schemas"]["PersonRef"] | null;
            offline: boolean;
        };
        Session: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            job: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            engine: string;
            purpose: components["schemas"]["SessionPurpose"];
            conditions: components["schemas"]["Conditions"];
            gauge: {
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                id: string;
                name: string;
            } | null;
            gaugeSpecification: components["schemas"]["CaseGauge"] | null;
            tester: {
                /**
                 * Format: uuid
                 * @description identifier, a UUID
                 * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
                 */
                id: string;
                name: string;
            } | null;
            testerSpecification: components["schemas"]["LeakageTester"] | null;
            apps: string[];
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            openedAt: string;
            openedBy: components["schemas"]["PersonRef"] | null;
            closedAt: string | null;
            readings: components["schemas"]["StoredReading"][];
            version: number;
        };
        /**
         * @example {
         *       "purpose": "test",
         *       "conditions": {
         *         "engine": "hot",
         *         "throttle": "open",
         *         "plugsOut": "all",
         *         "strokes": 8,
         *         "batteryVolts": 12.4,
         *         "altitudeM": 12,
         *         "airTempC": 18,
         *         "clearancesSet": true,
         *         "headTorqued": true
         *       },
         *       "gauge": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b",
         *       "tester": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b",
         *       "apps": [],
         *       "openedAt": "2026-05-06T10:20:00.000Z"
         *     }
         */
        NewSession: {
            /**
             * Format: uuid
             * @description made by the tablet when it opens a session without network; the same id again answers the same session
             */
            id?: string;
            /** @default test */
            purpose: components["schemas"]["SessionPurpose"];
            conditions: components["schemas"]["Conditions"];
            /** @default null */
            gauge: string | null;
            /** @default null */
            tester: string | null;
            /** @default [] */
            apps: string[];
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            openedAt?: string;
        };
        /**
         * @example {
         *       "picture": "iVBORw0KGgoAAAANSUhEUgAAAAgAAAAICAMAAADz0U65AAAAA1BMVEV3d3dY20ihAAAACXBIWXMAAAPoAAAD6AG1e1JrAAAADElEQVQImWNgoA4AAABIAAF7pRHIAAAAAElFTkSuQmCC",
         *       "takenAt": "2026-05-06T10:20:00.000Z",
         *       "takenBy": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b"
         *     }
         */
        PhotoPut: {
            /** @description a JPEG or PNG picture in base64, at most 4000000 characters */
            picture: string;
            /**
             * Format: date-time
             * @description the tablet's clock
             * @example 2026-05-06T10:20:00.000Z
             */
            takenAt: string;
            /**
             * Format: uuid
             * @description person who took it, where that is not who sends it
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            takenBy?: string;
            /** @constant */
            offline?: true;
        };
        Photo: {
            /**
             * Format: uuid
             * @description identifier made by the client, a UUID version 7
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            job: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            reading: string;
            sha256: string;
            bytes: number;
            width: number;
            height: number;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            takenAt: string;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            receivedAt: string;
            takenBy: components["schemas"]["PersonRef"] | null;
            offline: boolean;
            withdrawn: {
                /**
                 * Format: date-time
                 * @description instant, RFC 3339
                 * @example 2026-05-06T10:20:00.000Z
                 */
                at: string;
                by: components["schemas"]["PersonRef"] | null;
                reason: string;
            } | null;
        };
        /**
         * @example {
         *       "reason": "Taken of the wrong plug"
         *     }
         */
        PhotoWithdrawal: {
            reason: string;
        };
        JobEvaluation: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            job: string;
            case: components["schemas"]["Case"];
            readingIds: string[];
            evaluation: components["schemas"]["Evaluation"];
        };
        StoredEvaluation: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            job: string;
            model: string;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            createdAt: string;
            case: components["schemas"]["Case"];
            evaluation: components["schemas"]["Evaluation"];
        };
        /**
         * @example {
         *       "decision": "declined",
         *       "suggestion": {
         *         "tests": [
         *           {
         *             "test": "leakage",
         *             "cylinders": [
         *               3
         *             ]
         *           }
         *         ],
         *         "bits": 1.1,
         *         "minutes": 5.5,
         *         "bitsPerMinute": 0.2,
         *         "says": "Leakage, listening at every point on cylinder 3."
         *       },
         *       "reason": "No air in this bay today",
         *       "instead": "wet test"
         *     }
         */
        NewSuggestionDecision: {
            /** @constant */
            decision: "taken";
            suggestion: components["schemas"]["Suggestion"];
        } | {
            /** @constant */
            decision: "declined";
            suggestion: components["schemas"]["Suggestion"];
            reason: string;
            /** @default null */
            instead: string | null;
        };
        SuggestionDecision: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            job: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            evaluation: string;
            /** @enum {string} */
            decision: "taken" | "declined";
            suggestion: components["schemas"]["Suggestion"];
            instead: string | null;
            reason: string | null;
            by: components["schemas"]["PersonRef"] | null;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            at: string;
        };
        /** @enum {string} */
        TrailKind: "job-booked" | "session-opened" | "session-closed" | "reading" | "reading-replaced" | "reading-withdrawn" | "photo" | "photo-withdrawn" | "evaluation" | "suggestion-taken" | "suggestion-declined" | "testing-closed" | "quote-sent" | "quote-approved" | "quote-sent-back" | "quote-refused" | "approval-withdrawn" | "authorisation-given" | "authorisation-declined" | "repair-started" | "repair-finished" | "finding" | "retest-promised" | "retest-date" | "retest-passed" | "retest-failed" | "retest-waived" | "handed-over" | "cancelled" | "fitted" | "removed" | "engine-event" | "same-engine";
        TrailEntry: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            engine: string;
            job: string | null;
            garage: string | null;
            seq: number;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            at: string;
            kind: components["schemas"]["TrailKind"];
            actor: {
                kind: string;
                id: string;
                name: string | null;
            } | null;
            body: unknown | null;
            previousHash: string;
            hash: string;
        };
        TrailCheck: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            engine: string;
            entries: number;
            head: string;
            whole: boolean;
            broken: {
                seq: number;
                says: string;
            } | null;
        };
        NewQuoteLine: {
            /** @enum {string} */
            kind: "labour" | "part" | "other";
            /** @default null */
            operation: components["schemas"]["Operation"] | null;
            /** @default [] */
            cylinders: number[];
            text: string;
            quantity: number;
            /** @description money in minor units of the currency named beside it */
            rateMinor: number;
            taxBasisPoints: number;
        };
        QuoteLine: {
            /** @enum {string} */
            kind: "labour" | "part" | "other";
            operation: components["schemas"]["Operation"] | null;
            cylinders: number[];
            text: string;
            quantity: number;
            /** @enum {string} */
            unit: "hour" | "piece";
            rateMinor: number;
            taxBasisPoints: number;
            amountMinor: number;
        };
        Totals: {
            /**
             * @description ISO 4217 currency code
             * @example EUR
             */
            currency: string;
            pricesIncludeTax: boolean;
            netMinor: number;
            taxMinor: number;
            totalMinor: number;
            taxes: {
                basisPoints: number;
                onMinor: number;
                taxMinor: number;
            }[];
        };
        QuoteDraft: {
            lines: components["schemas"]["QuoteLine"][];
            note: string | null;
            author: components["schemas"]["PersonRef"];
            totals: components["schemas"]["Totals"];
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            updatedAt: string;
            version: number;
        };
        /**
         * @example {
         *       "lines": [
         *         {
         *           "kind": "labour",
         *           "operation": "head-valves",
         *           "cylinders": [
         *             3
         *           ],
         *           "text": "Head off, exhaust valve of 3 and its seat",
         *           "quantity": 8.5,
         *           "rateMinor": 7800,
         *           "taxBasisPoints": 2300
         *         }
         *       ],
         *       "note": "Look at the guides when it is off."
         *     }
         */
        QuoteDraftPut: {
            lines: components["schemas"]["NewQuoteLine"][];
            /** @default null */
            note: string | null;
        };
        Approval: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /** @enum {string} */
            kind: "approved" | "sent-back" | "refused" | "withdrawn";
            by: components["schemas"]["PersonRef"];
            deputyFor: components["schemas"]["PersonRef"] | null;
            ownQuote: boolean;
            reason: string | null;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            at: string;
        };
        /**
         * @example {
         *       "reason": "Nobody else here to ask"
         *     }
         */
        Approve: {
            reason?: string;
        };
        /**
         * @example {
         *       "question": "Is it a tight clearance? Check the rockers of 3 first."
         *     }
         */
        SendBack: {
            question: string;
        };
        /**
         * @example {
         *       "reason": "Not worth it on this engine"
         *     }
         */
        Refuse: {
            reason: string;
        };
        Authorisation: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            quoteVersion: string;
            /** @enum {string} */
            kind: "given" | "declined";
            personName: string;
            /** @enum {string} */
            method: "in-person" | "phone" | "message" | "written";
            numberCalled: string | null;
            /** @description money in minor units of the currency named beside it */
            amountMinor: number;
            /**
             * @description ISO 4217 currency code
             * @example EUR
             */
            currency: string;
            partsBack: boolean;
            note: string | null;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            givenAt: string;
            recordedBy: components["schemas"]["PersonRef"] | null;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            at: string;
        };
        /**
         * @example {
         *       "kind": "given",
         *       "personName": "Ada Wrenford",
         *       "method": "phone",
         *       "numberCalled": "+351 555 0142",
         *       "amountMinor": 93204,
         *       "partsBack": true,
         *       "note": "Wants the valve to look at",
         *       "givenAt": "2026-05-06T10:20:00.000Z"
         *     }
         */
        NewAuthorisation: {
            /** @enum {string} */
            kind: "given" | "declined";
            personName: string;
            /** @enum {string} */
            method: "in-person" | "phone" | "message" | "written";
            numberCalled?: string;
            /** @description money in minor units of the currency named beside it */
            amountMinor?: number;
            /** @default false */
            partsBack: boolean;
            note?: string;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            givenAt: string;
        };
        QuoteVersion: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            job: string;
            number: number;
            author: components["schemas"]["PersonRef"];
            note: string | null;
            evaluation: string | null;
            lines: components["schemas"]["QuoteLine"][];
            totals: components["schemas"]["Totals"];
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            sentAt: string;
            approvals: components["schemas"]["Approval"][];
            authorisations: components["schemas"]["Authorisation"][];
        };
        Quote: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            job: string;
            draft: components["schemas"]["QuoteDraft"] | null;
            versions: components["schemas"]["QuoteVersion"][];
            /** @description money in minor units of the currency named beside it */
            permittedMinor: number;
            /**
             * @description ISO 4217 currency code
             * @example EUR
             */
            currency: string;
        };
        SuggestedLine: {
            /** @enum {string} */
            kind: "labour" | "part" | "other";
            /** @default null */
            operation: components["schemas"]["Operation"] | null;
            /** @default [] */
            cylinders: number[];
            text: string;
            quantity: number;
            /** @description money in minor units of the currency named beside it */
            rateMinor: number;
            taxBasisPoints: number;
            says: string;
            cures: number | null;
        };
        Decision: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            job: string;
            code: string;
            plate: string;
            vehicle: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            quoteVersion: string;
            number: number;
            author: components["schemas"]["PersonRef"];
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            sentAt: string;
            totals: components["schemas"]["Totals"];
            mayApprove: boolean;
            why: string | null;
        };
        Repair: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            job: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            quoteVersion: string;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            startedAt: string;
            startedBy: components["schemas"]["PersonRef"] | null;
            finishedAt: string | null;
            finishedBy: components["schemas"]["PersonRef"] | null;
            operations: components["schemas"]["Operation"][];
            note: string | null;
        };
        /**
         * @example {
         *       "operations": [
         *         "head-valves"
         *       ],
         *       "note": "Guides were good"
         *     }
         */
        FinishRepair: {
            /** @default [] */
            operations: components["schemas"]["Operation"][];
            note?: string;
        };
        FindingCode: components["schemas"]["Fault"] | "gasket-between" | ("throttle-closed" | "slow-cranking" | "valve-timing" | "worn-evenly" | "gauge-error") | "nothing";
        Finding: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            job: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            engine: string;
            evaluation: string | null;
            cylinders: number[];
            fault: components["schemas"]["FindingCode"];
            seen: string;
            replaces: string | null;
            believed: number | null;
            by: components["schemas"]["PersonRef"] | null;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            at: string;
        };
        /**
         * @example {
         *       "cylinders": [
         *         3
         *       ],
         *       "fault": "exhaust-valve-leak",
         *       "seen": "Seat burnt over a quarter of its ring"
         *     }
         */
        NewFinding: {
            cylinders: number[];
            fault: components["schemas"]["FindingCode"];
            seen: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            replaces?: string;
        };
        /** @enum {string} */
        RetestKind: "release" | "follow-up";
        RetestDate: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            latest: string | null;
            odometerKm: number | null;
            event: string | null;
            bookedFor: string | null;
            reason: string | null;
            by: components["schemas"]["PersonRef"] | null;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            at: string;
        };
        Retest: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            job: string;
            code: string;
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            engine: string;
            kind: components["schemas"]["RetestKind"];
            reason: string;
            baselineSession: string | null;
            session: string | null;
            fulfilledByJob: string | null;
            dates: components["schemas"]["RetestDate"][];
            overdueDays: number | null;
            outcome: ("passed" | "failed" | "waived") | null;
            outcomeReason: string | null;
            decidedAt: string | null;
            decidedBy: components["schemas"]["PersonRef"] | null;
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            createdAt: string;
        };
        /**
         * @example {
         *       "reason": "Again after the first 1000 km",
         *       "latest": "2026-06-20",
         *       "odometerKm": 183400,
         *       "event": "first service"
         *     }
         */
        NewRetest: {
            reason: string;
            /** @default null */
            baselineSession: string | null;
            /** @default null */
            latest: string | null;
            /** @default null */
            odometerKm: number | null;
            /** @default null */
            event: string | null;
        };
        /**
         * @example {
         *       "latest": "2026-06-20",
         *       "odometerKm": 183400,
         *       "event": "first service",
         *       "bookedFor": "2026-05-06T10:20:00.000Z",
         *       "reason": "Away until then"
         *     }
         */
        NewRetestDate: {
            /** @default null */
            latest: string | null;
            /** @default null */
            odometerKm: number | null;
            /** @default null */
            event: string | null;
            /** @default null */
            bookedFor: string | null;
            reason: string;
        };
        /**
         * @example {
         *       "outcome": "passed",
         *       "session": "019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b",
         *       "reason": "Even again"
         *     }
         */
        RetestOutcome: {
            /** @enum {string} */
            outcome: "passed" | "failed";
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            session: string;
            reason?: string;
        };
        /**
         * @example {
         *       "reason": "Owner takes it to his own garage"
         *     }
         */
        Waiver: {
            reason: string;
        };
        RetestComparison: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            retest: string;
            baselineSession: string | null;
            session: string | null;
            comparison: components["schemas"]["Comparison"] | null;
            before: components["schemas"]["Evaluation"] | null;
            after: components["schemas"]["Evaluation"] | null;
        };
        /** @enum {string} */
        EventKind: "job.changed" | "session.opened" | "session.closed" | "reading.kept" | "photo.changed" | "suggestion.decided" | "quote.sent" | "quote.answered" | "authorisation.recorded" | "repair.changed" | "finding.recorded" | "retest.changed" | "garage.changed" | "customer.changed" | "engine.changed" | "trail.heads";
        LiveEvent: {
            id: string;
            kind: components["schemas"]["EventKind"];
            /**
             * Format: date-time
             * @description instant, RFC 3339
             * @example 2026-05-06T10:20:00.000Z
             */
            at: string;
            garage: string | null;
            job: string | null;
            engine: string | null;
            body: {
                [key: string]: unknown;
            };
        };
        Reliability: {
            garage: string | null;
            findings: number;
            /** @description share of findings that were the leading explanation */
            topOne: number | null;
            topTwo: number | null;
            logLoss: number | null;
            bins: {
                from: number;
                to: number;
                count: number;
                believed: number | null;
                found: number | null;
            }[];
            overrides: {
                declined: number;
                turnedOutRight: number;
            };
        };
        Problem: {
            /** @example /docs/problems/invalid-request */
            type: string;
            title: string;
            status: number;
            detail?: string;
            instance?: string;
            errors?: components["schemas"]["FieldError"][];
        };
        SecondFactor: {
            secret: string;
            uri: string;
        };
        /**
         * @example {
         *       "secret": "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567",
         *       "oneTimeCode": "123456"
         *     }
         */
        SecondFactorKept: {
            secret: string;
            oneTimeCode: string;
        };
        /**
         * @example {
         *       "link": "eblink-example",
         *       "password": "five old spanners"
         *     }
         */
        WayBackIn: {
            link: string;
            /** @description at least 12 characters */
            password: string;
        };
        KeySet: {
            keys: {
                [key: string]: unknown;
            }[];
        };
        StaffMember: {
            /**
             * Format: uuid
             * @description identifier, a UUID
             * @example 019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b
             */
            id: string;
            name: string;
            roles: string[];
        };
    };
    responses: never;
    parameters: never;
    requestBodies: never;
    headers: never;
    pathItems: never;
}
export type $defs = Record<string, never>;
export type operations = Record<string, never>;
