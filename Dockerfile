FROM node:24-bookworm AS build
WORKDIR /app
COPY package.json package-lock.json .npmrc ./
RUN npm ci
COPY tsconfig.json tsconfig.build.json ./
COPY core core
COPY commands commands
COPY bot bot
RUN npm run build && node dist/bot/deploy/notices-cli.js > NOTICES.txt && npm prune --omit=dev

FROM node:24-bookworm-slim
ENV NODE_ENV=production DATA_DIR=/data
WORKDIR /app
COPY --from=build /app/package.json ./
COPY --from=build /app/node_modules node_modules
COPY --from=build /app/dist dist
COPY --from=build /app/NOTICES.txt ./
COPY LICENSE ./
COPY core/DATA.md core/DATA.md
COPY core/language/model/weights.bin core/language/model/weights.bin
RUN mkdir /data && chown node:node /data
USER node
VOLUME /data
STOPSIGNAL SIGTERM
HEALTHCHECK --interval=30s --timeout=5s --start-period=60s --retries=3 \
  CMD ["node", "dist/bot/heartbeat-cli.js"]
CMD ["node", "--enable-source-maps", "dist/bot/main.js"]
